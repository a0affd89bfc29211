package rulebook_test

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"math/rand/v2"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/folder"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// stock starts Open Policy Agent's own server, as `opa run --server` does, with a bundle, and gives its address.
func stock(t *testing.T, file string, more ...string) string {
	t.Helper()
	tool, err := exec.Command("go", "tool", "-n", "opa").Output()
	require.NoError(t, err, "the opa tool of go.mod")
	free, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	address := free.Addr().String()
	require.NoError(t, free.Close())
	var said bytes.Buffer
	server := exec.Command(strings.TrimSpace(string(tool)), append([]string{"run", "--server", "--addr", address, "--skip-version-check", "--log-level", "error", "--bundle", file}, more...)...)
	server.Stderr = &said
	require.NoError(t, server.Start())
	t.Cleanup(func() {
		server.Process.Kill()
		server.Wait()
	})
	base := "http://" + address
	for range 200 {
		if answer, err := http.Get(base + "/health?bundles"); err == nil {
			answer.Body.Close()
			if answer.StatusCode == http.StatusOK {
				return base
			}
		}
		time.Sleep(50 * time.Millisecond)
	}
	t.Fatalf("the server does not come up: %s", said.String())
	return ""
}

func post(url string, body, into any) error {
	text, err := json.Marshal(body)
	if err != nil {
		return err
	}
	answer, err := http.Post(url, "application/json", bytes.NewReader(text))
	if err != nil {
		return err
	}
	defer answer.Body.Close()
	said, err := io.ReadAll(answer.Body)
	if err == nil && answer.StatusCode != http.StatusOK {
		err = fmt.Errorf("%s: %.300s", answer.Status, said)
	}
	if err != nil {
		return err
	}
	return json.Unmarshal(said, into)
}

// jobsAsked is about how many jobs a server is asked, and how many where HEARSAY_THOROUGH asks for more.
func jobsAsked(usual, thorough int) int {
	if os.Getenv("HEARSAY_THOROUGH") != "" {
		return thorough
	}
	return usual
}

func bundleFile(t *testing.T, b *rulebook.Book, key *rulebook.Key) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "rulebook.tar.gz")
	f, err := os.Create(file)
	require.NoError(t, err)
	require.NoError(t, b.WriteBundle(f, key))
	require.NoError(t, f.Close())
	return file
}

// manyJobs draws jobs: some from the whole dictionary, and from each of those others with facts forgotten.
func manyJobs(t *testing.T, b *rulebook.Book, n int) []*job.Job {
	const variants = 25
	random := rand.New(rand.NewPCG(3, 5))
	whole := rapid.Custom(func(t *rapid.T) *job.Job { return randomJob(t, b) })
	var jobs []*job.Job
	for seed := 0; len(jobs) < n; seed++ {
		full := whole.Example(seed)
		jobs = append(jobs, full)
		for range variants - 1 {
			less := full.Clone()
			keep := random.Float64()
			for _, s := range slices.Clone(less.Stated) {
				if s.From == "" && random.Float64() > keep {
					less.Drop(s.Fact.Path)
				}
			}
			require.NoError(t, less.Follow(b.Facts))
			jobs = append(jobs, less)
		}
	}
	return jobs[:n]
}

// wrongs lists the findings that are wrong, as "practice: reason", sorted.
func wrongs(r *rulebook.Review) []string {
	var list []string
	for _, one := range r.Judgements {
		for _, reason := range one.Reasons {
			list = append(list, one.Practice.ID+": "+reason)
		}
	}
	slices.Sort(list)
	return list
}

// practices are the documents below data.practice, as a stock server gives them.
type practices map[string]map[string]struct {
	Wrong []string `json:"wrong"`
}

func (p practices) wrongs() []string {
	var list []string
	for topic, names := range p {
		for name, one := range names {
			for _, reason := range one.Wrong {
				list = append(list, topic+"/"+name+": "+reason)
			}
		}
	}
	slices.Sort(list)
	return list
}

// TestStockServerFindsTheSame: a stock Open Policy Agent with the bundle, given what `hearsay facts --figures` prints, finds the
// same things wrong. (Seventh promise.) HEARSAY_THOROUGH=1 asks about a thousand jobs.
func TestStockServerFindsTheSame(t *testing.T) {
	b := load(t)
	server := stock(t, bundleFile(t, b, nil))
	n := jobsAsked(200, 1000)
	const batch, single = 50, 40 // jobs in a request; each so many-th asked about alone
	found := map[string]bool{}
	for jobs := range slices.Chunk(manyJobs(t, b, n), batch) {
		here, inputs := make([][]string, len(jobs)), make([]map[string]any, len(jobs))
		for i, j := range jobs {
			review, err := b.Judge(context.Background(), j)
			require.NoError(t, err)
			q, err := b.Query(context.Background(), j)
			require.NoError(t, err)
			here[i], inputs[i] = wrongs(review), q.Input
			for _, w := range here[i] {
				found[w] = true
			}
			if i%single == 0 {
				var answer struct {
					Result practices `json:"result"`
				}
				require.NoError(t, post(server+"/v1/data/practice", map[string]any{"input": q.Input}, &answer))
				require.Equal(t, here[i], answer.Result.wrongs())
			}
		}
		for i, there := range together(t, server, inputs) {
			require.Equal(t, here[i], there)
		}
	}
	t.Logf("%d jobs, %d different findings", n, len(found))
	assert.Greater(t, len(found), 60, "the jobs find too little to compare")
}

// together asks about several jobs in one request.
func together(t *testing.T, server string, inputs []map[string]any) [][]string {
	t.Helper()
	var answer struct {
		Result []struct {
			Found [][][3]string `json:"found"`
		} `json:"result"`
	}
	require.NoError(t, post(server+"/v1/query", map[string]any{"input": map[string]any{"jobs": inputs},
		"query": "found := [[[t, n, r] | data.practice[t][n].wrong[r] with input as j] | j := input.jobs[_]]"}, &answer))
	require.Len(t, answer.Result, 1)
	require.Len(t, answer.Result[0].Found, len(inputs))
	lists := make([][]string, len(inputs))
	for i, one := range answer.Result[0].Found {
		for _, x := range one {
			lists[i] = append(lists[i], x[0]+"/"+x[1]+": "+x[2])
		}
		slices.Sort(lists[i])
	}
	return lists
}

// TestBundleIsTheWholeRulebook: what is read from a bundle is the same rulebook, packs and all, and judges the same; a stock server
// with it sees the packs' rules in place of those they replace, and none that they switched off.
func TestBundleIsTheWholeRulebook(t *testing.T) {
	own := pack(t, map[string]string{
		"pack.yaml":                   head + "off:\n  cure/none: the county cures itself\n",
		"rules/facts.yaml":            permitFact,
		"rules/county/no-permit.rego": rule,
		"rules/sources.yaml":          "county-spec: {title: County Paving Specification, by: Heron County}\n",
		"rules/limits/delivery.yaml": "default_time_limit: {value: {\"2013 to 2020\": 60}, unit: min, what: time limit for discharge, " +
			"condition: in the county, source: county-spec, where: section 4, basis: published}\n",
	})
	b, err := rulebook.Load(rules.Files, own)
	require.NoError(t, err)
	private, public := pair(t, "ES256")
	var signed, plain, again bytes.Buffer
	require.NoError(t, b.WriteBundle(&signed, private))
	require.NoError(t, b.WriteBundle(&plain, nil))
	require.NoError(t, b.WriteBundle(&again, nil))
	assert.Equal(t, plain.Bytes(), again.Bytes(), "the same rulebook gives the same bytes")

	read, err := rulebook.ReadBundle(bytes.NewReader(signed.Bytes()), public)
	require.NoError(t, err)
	same, err := read.Load()
	require.NoError(t, err)
	assert.Equal(t, b.Revision(), same.Revision())
	const text = "member: {use: driveway}\ncounty: {permit: no}\ncure: {method: none}\nload: {age: 70 min, limit_source: standard, limit_waived: no}\njob: {delivery_standard: 2013 to 2020}\n"
	for _, id := range []string{"county/no-permit", "cure/none", "delivery/too-old"} {
		one, other := judged(t, b, text, id), judged(t, same, text, id)
		assert.Equal(t, one.Status, other.Status, id)
		assert.Equal(t, one.Changed, other.Changed, id)
		assert.NotEmpty(t, one.Changed, id)
	}

	j, _, err := job.Read(b.Facts, "job", []byte(text))
	require.NoError(t, err)
	review, err := b.Judge(context.Background(), j)
	require.NoError(t, err)
	var answer struct {
		Result practices `json:"result"`
	}
	q, err := b.Query(context.Background(), j)
	require.NoError(t, err)
	require.NoError(t, post(stock(t, bundleFile(t, b, nil))+"/v1/data/practice", map[string]any{"input": q.Input}, &answer))
	assert.Equal(t, wrongs(review), answer.Result.wrongs())
	assert.Contains(t, answer.Result.wrongs(), "county/no-permit: no permit was given")

	_, err = rulebook.ReadBundle(bytes.NewReader(plain.Bytes()), public)
	assert.ErrorContains(t, err, "it carries no signature")
}

// TestStockServerChecksTheSignature: the signature of a bundle is one that a stock server checks.
func TestStockServerChecksTheSignature(t *testing.T) {
	secret := "a secret that is long enough to be shared by two"
	stock(t, bundleFile(t, load(t), readKey(t, []byte(secret))), "--verification-key", secret, "--signing-alg", "HS256")
}

// TestHostileBundleIsRefused: a bundle from elsewhere is held to the form and to itself.
func TestHostileBundleIsRefused(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, load(t).WriteBundle(&out, nil))
	for name, c := range map[string]struct {
		change func(m map[string][]byte)
		want   string
	}{
		"network": {func(m map[string][]byte) {
			addTo(m, "rules/water/over-limit.rego", "\nwrong contains \"x\" if http.send({})\n")
		}, "http.send"},
		"shared":        {func(m map[string][]byte) { addTo(m, "rules/trade/exposure.rego", "\nx if time.now_ns() > 0\n") }, "time.now_ns"},
		"other content": {func(m map[string][]byte) { addTo(m, "rules/facts.yaml", "\n") }, "its manifest says revision"},
		"no manifest":   {func(m map[string][]byte) { delete(m, ".manifest") }, "it has no manifest"},
		"no facts":      {func(m map[string][]byte) { delete(m, "rules/facts.yaml") }, "the dictionary of facts is missing"},
	} {
		t.Run(name, func(t *testing.T) {
			files := unpacked(t, out.Bytes())
			c.change(files)
			var again bytes.Buffer
			require.NoError(t, files.Tar(&again))
			b, err := rulebook.ReadBundle(&again, nil)
			if err == nil {
				_, err = b.Load()
			}
			assert.ErrorContains(t, err, c.want)
		})
	}
}

func addTo(m map[string][]byte, name, text string) {
	m[name] = append(slices.Clone(m[name]), text...)
}

func unpacked(t testing.TB, archive []byte) folder.Memory {
	t.Helper()
	m, err := folder.Untar(bytes.NewReader(archive), func(string) bool { return true }, folder.Bounds{Files: 5000, File: 1 << 20, Bytes: 32 << 20, Depth: 9})
	require.NoError(t, err)
	return m
}
