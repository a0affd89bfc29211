package rulebook

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"hearsay/internal/document"
	"hearsay/internal/job"
)

// RunJobs judges the jobs of a pack: jobs/<topic>/<name>.yaml has two for its practice. In the one under wrong it is wrong, every number
// listed is there, and its correction puts it right; in the one under right it is right. Practices of the pack that have no such
// file are named as unproven.
func (b *Book) RunJobs(ctx context.Context, p *Pack) (results []TestResult, unproven []string, err error) {
	for _, one := range b.practices {
		if _, ok := p.Files[jobsFile(one)]; !ok && one.Pack == p.Name {
			unproven = append(unproven, one.ID)
		}
	}
	for _, file := range p.Files.Names() {
		id, isJobs := strings.CutPrefix(strings.TrimSuffix(file, ".yaml"), "jobs/")
		if !isJobs {
			continue
		}
		var failure error
		if practice, ok := b.byID[id]; !ok {
			failure = fmt.Errorf("there is no practice %s (`hearsay rules` lists them)", id)
		} else {
			failure = b.provenBy(ctx, practice, file, p.Files[file])
		}
		if ctx.Err() != nil {
			return nil, nil, ctx.Err()
		}
		result := TestResult{Name: file}
		if failure != nil {
			result.Failure = strings.TrimPrefix(failure.Error(), file+": ") // which stands before it
		}
		results = append(results, result)
	}
	return results, unproven, nil
}

func jobsFile(p *Practice) string { return "jobs/" + p.ID + ".yaml" }

// provenBy judges the two jobs of a practice.
func (b *Book) provenBy(ctx context.Context, p *Practice, file string, text []byte) error {
	jobs, err := readJobs(b.Facts, file, text)
	if err != nil {
		return err
	}
	judge := func(j *job.Job) (*Judgement, error) { return b.JudgeOne(ctx, j, p.ID) }
	wrong, err := judge(jobs["wrong"])
	if err != nil {
		return err
	}
	if wrong.Status != Wrong {
		return fmt.Errorf("%s: wrong: it is not wrong there: %s", file, cameOut(wrong))
	}
	for _, name := range p.Numbers {
		if !slices.ContainsFunc(wrong.Numbers, func(n Number) bool { return n.Name == name }) {
			return fmt.Errorf("%s: wrong: the number %q does not come out: state the facts that it needs", file, name)
		}
	}
	mended, err := Mended(b.Facts, jobs["wrong"], wrong.Mend)
	if err != nil {
		return fmt.Errorf("%s: wrong: %w", file, err)
	}
	after, err := judge(mended)
	if err != nil {
		return err
	}
	if len(wrong.Mend) == 0 || after.Status != Right && after.Status != NotHere {
		return fmt.Errorf("%s: wrong: its correction does not put it right: %s; see the mend rules", file, cameOut(after))
	}
	right, err := judge(jobs["right"])
	if err == nil && right.Status != Right {
		err = fmt.Errorf("%s: right: it is not right there: %s", file, cameOut(right))
	}
	return err
}

// cameOut says what a practice came out as, and on what an open answer hangs.
func cameOut(one *Judgement) string {
	switch one.Status {
	case Ask:
		return "it asks for " + strings.Join(one.Asks, ", ")
	case Wrong:
		return "it is wrong, since " + strings.Join(one.Reasons, "; ")
	case NotHere:
		return "it does not concern that job"
	}
	return "it is " + one.Status
}

// readJobs reads the jobs that stand under wrong and right, each in its place, so that errors name the lines of the file.
func readJobs(facts *job.Dictionary, file string, text []byte) (map[string]*job.Job, error) {
	sections, err := document.Read[any](file, text)
	if err != nil {
		return nil, err
	}
	jobs := map[string]*job.Job{}
	lines := strings.SplitAfter(string(text), "\n")
	for i, s := range sections {
		if s.Name != "wrong" && s.Name != "right" {
			return nil, fmt.Errorf("%s: line %d: %q does not belong here: there are two jobs, wrong and right", file, s.Line, s.Name)
		}
		end := len(lines)
		if i+1 < len(sections) {
			end = sections[i+1].Line - 1
		}
		own := slices.Clone(lines[s.Line-1 : end])
		own[0] = strings.Replace(own[0], s.Name+":", strings.Repeat(" ", len(s.Name)+1), 1)
		j, _, err := job.Read(facts, file, []byte(strings.Repeat("\n", s.Line-1)+strings.Join(own, "")))
		if err != nil {
			return nil, err
		}
		jobs[s.Name] = j
	}
	if jobs["wrong"] == nil || jobs["right"] == nil {
		return nil, fmt.Errorf("%s: write two jobs, one under wrong: and one under right: as `hearsay pack new` shows", file)
	}
	return jobs, nil
}
