package words

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"hearsay/internal/job"
)

// learn takes in the phrases of one words.yaml. What it says of a fact, a role or an event that another file speaks of adds to
// that.
func (r *Reader) learn(y *vocabularyYAML) error {
	maps.Copy(r.topics, y.Topics)
	for _, role := range y.Roles {
		i := slices.Index(r.roles, role.Name)
		if i < 0 {
			i = len(r.roles)
			r.roles, r.rolePoints = append(r.roles, role.Name), append(r.rolePoints, role.Value.Silent)
		}
		if err := r.add(role.Value.Before, use{target: i, role: useBefore}); err != nil {
			return err
		}
		if err := r.add(role.Value.After, use{target: i, role: useAfter}); err != nil {
			return err
		}
	}
	for _, e := range y.Events {
		i := slices.Index(r.events, e.Name)
		if i < 0 {
			i = len(r.events)
			r.events = append(r.events, e.Name)
		}
		if err := r.add(e.Value, use{target: i, role: useEvent}); err != nil {
			return err
		}
	}
	if err := r.learnSpans(y); err != nil {
		return err
	}
	if err := r.add(y.Ignore, use{role: useIgnore}); err != nil {
		return err
	}
	for _, e := range y.Facts {
		if err := r.learnFact(e.Name, e.Value); err != nil {
			return fmt.Errorf("line %d: %s: %w", e.Line, e.Name, err)
		}
	}
	return nil
}

// learnWords takes in the words of facts.yaml.
func (r *Reader) learnWords() error {
	for i, s := range r.facts {
		if err := r.add(s.Words, use{target: i, role: useNear}); err != nil {
			return fmt.Errorf("facts.yaml: %s: %w", s.Path, err)
		}
	}
	return nil
}

// learnSpans takes in the facts that are the time between two events, and the shares of a material.
func (r *Reader) learnSpans(y *vocabularyYAML) error {
	for _, sp := range y.Spans {
		fact, ok := r.byPath[sp.Fact]
		from, to := slices.Index(r.events, sp.From), slices.Index(r.events, sp.To)
		if !ok || from < 0 || to < 0 {
			return fmt.Errorf("the span of %s is not from one event to another", sp.Fact)
		}
		r.spans = append(r.spans, span{fact, from, to})
	}
	for _, e := range y.Echoes {
		i := len(r.echoed)
		one, ok1 := r.byPath[e.One]
		other, ok2 := r.byPath[e.Other]
		if !ok1 || !ok2 {
			return fmt.Errorf("%s and %s are not both facts", e.One, e.Other)
		}
		r.echoed = append(r.echoed, [2]int{one, other})
		if err := r.add(e.Said, use{target: i, role: useEcho}); err != nil {
			return err
		}
	}
	for path, phrases := range y.Shares {
		fact, ok := r.byPath[path]
		if !ok {
			return fmt.Errorf("%s is not a fact of facts.yaml", path)
		}
		if err := r.add(phrases, use{target: fact, role: useShare}); err != nil {
			return err
		}
	}
	return nil
}

func (r *Reader) learnFact(path string, e sayingYAML) error {
	i, ok := r.byPath[path]
	if !ok {
		return fmt.Errorf("is not a fact of facts.yaml (`hearsay facts` lists them)")
	}
	s := r.facts[i]
	s.bareSaid = s.bareSaid || e.BareSaid
	s.bare, s.takes, s.topic, s.alone = cmp.Or(e.Bare, s.bare), cmp.Or(e.Takes, s.takes), cmp.Or(e.Topic, s.topic), cmp.Or(e.Alone, s.alone)
	if len(e.Units) > 0 {
		s.units = e.Units
	}
	if len(e.Plain) > 0 {
		s.plain = e.Plain
	}
	if len(e.In) > 0 {
		s.in = set(e.In)
	}
	for name := range strings.FieldsSeq(e.Role) {
		k := slices.Index(r.roles, name)
		if k < 0 {
			return fmt.Errorf("no role is called %s", name)
		}
		s.parts = append(s.parts, k)
	}
	s.needy = s.needy || len(e.Needs)+len(e.NeedsBare) > 0
	s.needyBare = s.needyBare || len(e.NeedsBare) > 0
	s.gated = s.gated || len(e.Context) > 0
	if len(e.ContextUnits) > 0 || s.gateUnits == nil {
		s.gateUnits = set(e.ContextUnits)
	}
	topic, ok := r.topics[e.Topic]
	if e.Topic != "" && !ok {
		return fmt.Errorf("no topic is called %s", e.Topic)
	}
	for _, list := range []struct {
		phrases []string
		role    byte
	}{{topic.Near, useNear}, {topic.Said, useSaid}, {e.Near, useNear}, {e.Said, useSaid}, {e.Never, useNever}, {e.Context, useContext}, {e.Needs, useNeeds}, {e.NeedsBare, useNeeds}} {
		if err := r.add(list.phrases, use{target: i, role: list.role}); err != nil {
			return err
		}
	}
	for _, value := range e.Is {
		if err := r.checkValue(s, value.Name); err != nil {
			return err
		}
		if err := r.add(value.Value, use{target: i, role: useValue, value: value.Name}); err != nil {
			return err
		}
	}
	return nil
}

// checkValue refuses a value that the fact cannot have.
func (r *Reader) checkValue(s *saying, value string) error {
	return job.New().State(r.d, s.Path, value)
}

// add puts patterns into the index.
func (r *Reader) add(phrases []string, u use) error {
	for _, text := range phrases {
		p, err := r.v.parsePattern(text)
		if err != nil {
			return err
		}
		u.pattern = p
		e := &p.elements[p.anchor]
		first := e.first()
		slices.Sort(first)
		for _, id := range slices.Compact(first) {
			for int(id) >= len(r.index) {
				r.index = append(r.index, nil)
			}
			r.index[id] = append(r.index[id], u)
		}
	}
	return nil
}
