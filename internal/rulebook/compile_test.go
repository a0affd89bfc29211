package rulebook_test

import (
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// TestStockServerLeavesOpenTheSame: what the compile API of a stock server leaves open of a half-stated job is what is open here,
// and the other way round, practice by practice and reason by reason. What it leaves open and is settled here must hold a
// condition that no value of its fact or figure can meet in this job: a server knows no ranges and no dictionary.
// HEARSAY_THOROUGH=1 asks about 300 jobs.
func TestStockServerLeavesOpenTheSame(t *testing.T) {
	b := load(t)
	server := stock(t, bundleFile(t, b, nil))
	n := jobsAsked(12, 300)
	met, ruledOut, asks := 0, 0, 0
	for i, j := range manyJobs(t, b, 6*n) {
		if i%6 != 5 {
			continue
		}
		review, err := b.Judge(context.Background(), j)
		require.NoError(t, err)
		q, err := b.Query(context.Background(), j)
		require.NoError(t, err)
		there, err := leftOpen(server, q)
		require.NoError(t, err)
		can := &satisfier{book: b, job: j, review: review, cannot: map[string]bool{}}
		for _, one := range review.Judgements {
			if one.Status == rulebook.Ask {
				asks++
			}
			assert.NoError(t, can.agree(one, there[one.Practice.ID]), "%s is %s in %s", one.Practice.ID, one.Status, stated(j))
		}
		met, ruledOut = met+can.met, ruledOut+can.ruledOut
		if t.Failed() {
			return
		}
	}
	t.Logf("%d jobs, %d open practices, %d ways left open; %d more that a range or the dictionary rules out", n, asks, met, ruledOut)
	assert.Greater(t, asks, 60*n)
	assert.Positive(t, ruledOut)
}

// agree holds one practice to what a server leaves open of it: all ways, and those that can be met.
func (s *satisfier) agree(one *rulebook.Judgement, all []residual) error {
	open := s.meet(all)
	s.met, s.ruledOut = s.met+len(open), s.ruledOut+len(all)-len(open)
	here := map[string]bool{}
	for _, o := range one.Open {
		if len(o.Facts) == 0 && len(o.NoFigure) > 0 && len(o.Conditions) == 0 {
			return nil // facts that say the same differ a little: a server takes the one, here that is asked
		}
		here[o.Reason] = true
	}
	there, sure := map[string]bool{}, map[string]bool{}
	for _, r := range all {
		there[r.reason] = true
		if len(r.conditions) == 0 {
			sure[r.reason] = true
		}
	}
	switch one.Status {
	case rulebook.Wrong:
		for _, reason := range one.Reasons {
			if !there[reason] {
				return fmt.Errorf("%q holds here, and nothing is left of it there", reason)
			}
		}
		for reason := range sure {
			if !slices.Contains(one.Reasons, reason) {
				return fmt.Errorf("%q holds there, not here", reason)
			}
		}
	case rulebook.Ask:
		if len(sure) > 0 {
			return fmt.Errorf("it is wrong there: %v", slices.Sorted(maps.Keys(sure)))
		}
		for reason := range here {
			if !there[reason] {
				return fmt.Errorf("%q is open here, and nothing is left of it there: %v", reason, all)
			}
		}
		for _, r := range open {
			if !here[r.reason] && !slices.ContainsFunc(open, func(less residual) bool { return here[less.reason] && s.holdsOnlyWith(r, less) }) {
				return fmt.Errorf("%q can hold there, and is not open here: %v; open here: %+v", r.reason, r, one.Open)
			}
		}
	default:
		if len(open) > 0 {
			return fmt.Errorf("it can be wrong there: %v", open)
		}
	}
	return nil
}

// residual is one way in which a practice would be wrong, as a server leaves it open.
type residual struct {
	reason     string
	conditions []*ast.Expr
}

func (r residual) String() string { return fmt.Sprintf("%s, where %v", r.reason, r.conditions) }

// holdsOnlyWith says that each condition of another way follows from one of this way's, so that it holds wherever this does.
func (s *satisfier) holdsOnlyWith(r, less residual) bool {
	return !slices.ContainsFunc(less.conditions, func(a *ast.Expr) bool {
		return !slices.ContainsFunc(r.conditions, func(b *ast.Expr) bool { return s.follows(a, b) })
	})
}

// follows says that a condition is another one, or asks for less of the same thing.
func (s *satisfier) follows(a, from *ast.Expr) bool {
	bare := func(e *ast.Expr) string {
		c := e.Copy()
		c.Index = 0
		return c.String()
	}
	if bare(a) == bare(from) {
		return true
	}
	if a.Negated || from.Negated || !a.IsCall() || !from.IsCall() || len(a.Operands()) != 2 || len(from.Operands()) != 2 ||
		!a.Operand(0).Equal(from.Operand(0)) || a.Operator().String() != from.Operator().String() {
		return false
	}
	for _, least := range s.values(a.Operand(1), a.Operand(0)) {
		for _, given := range s.values(from.Operand(1), from.Operand(0)) {
			x, isNumber := least.(float64)
			y, bothNumbers := given.(float64)
			switch op := a.Operator().String(); {
			case !isNumber || !bothNumbers:
				return false
			case (op == "gt" || op == "gte") && y >= x, (op == "lt" || op == "lte") && y <= x:
			default:
				return false
			}
		}
	}
	return true
}

// leftOpen asks the compile API and sorts what it leaves open by practice.
func leftOpen(server string, q *rulebook.Query) (map[string][]residual, error) {
	var answer struct {
		Result struct {
			Queries []json.RawMessage `json:"queries"`
		} `json:"result"`
	}
	asked := map[string]any{"input": q.Input, "query": "x := data.practice[topic][name].wrong[reason]; y := [topic, name]", "unknowns": q.Unknowns}
	if err := post(server+"/v1/compile", asked, &answer); err != nil {
		return nil, err
	}
	left := map[string][]residual{}
	for _, text := range answer.Result.Queries {
		var body ast.Body
		if err := json.Unmarshal(text, &body); err != nil {
			return nil, err
		}
		bound, r := map[string]string{}, residual{}
		for _, e := range body {
			if name, value, ok := binding(e); ok {
				bound[name] = value
			} else {
				r.conditions = append(r.conditions, e)
			}
		}
		r.reason = bound["reason"]
		id := bound["topic"] + "/" + bound["name"]
		left[id] = append(left[id], r)
	}
	return left, nil
}

// binding reads `name = "text"`, in either order.
func binding(e *ast.Expr) (name, value string, ok bool) {
	if !e.IsEquality() || e.Negated {
		return "", "", false
	}
	for _, pair := range [][2]*ast.Term{{e.Operand(0), e.Operand(1)}, {e.Operand(1), e.Operand(0)}} {
		v, isVar := pair[0].Value.(ast.Var)
		text, isText := pair[1].Value.(ast.String)
		if isVar && isText {
			return string(v), string(text), true
		}
	}
	return "", "", false
}

// satisfier says which conditions can be met in a job, by trying: a value of a fact can be what can be stated beside the
// others, a figure what lies within its range.
type satisfier struct {
	book   *rulebook.Book
	job    *job.Job
	review *rulebook.Review
	cannot map[string]bool // a fact with a value: stating it contradicts the job

	met, ruledOut int // ways that can be met, and that cannot
}

// meet keeps the ways whose conditions can be met one by one, without the conditions that are met in any case.
func (s *satisfier) meet(all []residual) []residual {
	var can []residual
	for _, r := range all {
		left, never := residual{reason: r.reason}, false
		for _, e := range r.conditions {
			some, every := s.try(e)
			never = never || !some
			if !every {
				left.conditions = append(left.conditions, e)
			}
		}
		if !never {
			can = append(can, left)
		}
	}
	return can
}

// try says whether some of what its sides can be meets a condition, and whether all of it does.
func (s *satisfier) try(e *ast.Expr) (some, every bool) {
	if e.Negated || !e.IsCall() || len(e.Operands()) != 2 {
		return true, false
	}
	every = true
	for _, a := range s.values(e.Operand(0), e.Operand(1)) {
		for _, b := range s.values(e.Operand(1), e.Operand(0)) {
			if a == nil || b == nil {
				return true, false
			}
			met := holds(e.Operator().String(), a, b)
			if met && some || !met && !every || !s.canBe(e.Operand(0), a) || !s.canBe(e.Operand(1), b) {
				continue
			}
			some, every = some || met, every && met
		}
	}
	return some, every
}

// values lists what a term can be; nil stands for anything. What it is compared with is a value of interest too.
func (s *satisfier) values(t, against *ast.Term) []any {
	ref, isRef := t.Value.(ast.Ref)
	if !isRef {
		v, err := ast.JSON(t.Value)
		if err != nil {
			return []any{nil}
		}
		if set, isSet := t.Value.(ast.Set); isSet {
			v, _ = ast.JSON(ast.NewArray(set.Slice()...))
		}
		return []any{plainNumber(v)}
	}
	var words []string
	for _, w := range ref[1:] {
		words = append(words, strings.Trim(w.String(), `"`))
	}
	if len(words) < 2 || ref[0].String() != "input" {
		return []any{nil}
	}
	if words[0] == "figure" || words[0] == "range" {
		r := s.review.Sheet.Result(words[1])
		switch {
		case !r.Bounded:
			return []any{nil}
		case words[0] == "figure":
			return []any{r.BestLow, r.BestHigh, (r.BestLow + r.BestHigh) / 2}
		}
		return []any{r.Low, r.High}
	}
	if f := s.fact(t); f != nil {
		return ofFact(f, against)
	}
	return []any{nil}
}

// fact is the fact that a term names, or nil.
func (s *satisfier) fact(t *ast.Term) *job.Fact {
	ref, isRef := t.Value.(ast.Ref)
	if !isRef || len(ref) != 3 || ref[0].String() != "input" {
		return nil
	}
	group, _ := ref[1].Value.(ast.String)
	key, _ := ref[2].Value.(ast.String)
	f, _ := s.book.Facts.Fact(string(group) + "." + string(key))
	return f
}

// ofFact lists values of a fact.
func ofFact(f *job.Fact, against *ast.Term) []any {
	var all []any
	switch f.Kind {
	case job.KindChoice:
		for _, c := range f.Choices {
			all = append(all, c.Value)
		}
	case job.KindFlag:
		all = []any{true, false}
	case job.KindQuantity:
		for i := range 21 {
			all = append(all, f.Possible.Low+(f.Possible.High-f.Possible.Low)*float64(i)/20)
		}
		if n, isNumber := against.Value.(ast.Number); isNumber {
			at, _ := n.Float64()
			for _, x := range []float64{at, at * 1.001, at * 0.999, at + 0.001, at - 0.001} {
				if f.Possible.Contains(x) {
					all = append(all, x)
				}
			}
		}
	default:
		return []any{nil}
	}
	return all
}

// canBe says whether a term can have a value: a fact can where stating it beside the others contradicts none of them.
func (s *satisfier) canBe(t *ast.Term, v any) bool {
	f := s.fact(t)
	if f == nil {
		return true
	}
	key := fmt.Sprint(f.Path, "=", v)
	cannot, known := s.cannot[key]
	if !known {
		given := v
		if n, isNumber := v.(float64); isNumber {
			given = map[string]any{"value": n, "unit": f.Unit}
		}
		with := s.job.Clone()
		cannot = with.State(s.book.Facts, f.Path, given) != nil || with.Follow(s.book.Facts) != nil
		s.cannot[key] = cannot
	}
	return !cannot
}

func plainNumber(v any) any {
	if n, isNumber := v.(json.Number); isNumber {
		f, err := n.Float64()
		if err == nil {
			return f
		}
	}
	return v
}

func holds(op string, a, b any) bool {
	if op == "internal.member_2" {
		list, _ := b.([]any)
		return slices.Contains(list, a)
	}
	x, isNumber := a.(float64)
	y, bothNumbers := b.(float64)
	if !isNumber || !bothNumbers {
		return (a == b) == (op != "neq")
	}
	switch op {
	case "gt":
		return x > y
	case "gte":
		return x >= y
	case "lt":
		return x < y
	case "lte":
		return x <= y
	case "neq":
		return x != y
	}
	return x == y
}
