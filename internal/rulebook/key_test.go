package rulebook_test

import (
	"crypto/ecdsa"
	"crypto/ed25519"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/rsa"
	"crypto/x509"
	"encoding/pem"
	"maps"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/folder"
	"hearsay/internal/rulebook"
)

// pair makes the private and the public key of one kind.
func pair(t *testing.T, kind string) (private, public *rulebook.Key) {
	t.Helper()
	var own, others any
	switch kind {
	case "ES256":
		k, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
		require.NoError(t, err)
		own, others = k, &k.PublicKey
	case "RS256":
		k, err := rsa.GenerateKey(rand.Reader, 2048)
		require.NoError(t, err)
		own, others = k, &k.PublicKey
	case "EdDSA":
		p, k, err := ed25519.GenerateKey(rand.Reader)
		require.NoError(t, err)
		own, others = k, p
	case "secret":
		text := []byte("a secret that is long enough to be shared by two\n")
		return readKey(t, text), readKey(t, text)
	}
	ownBytes, err := x509.MarshalPKCS8PrivateKey(own)
	require.NoError(t, err)
	othersBytes, err := x509.MarshalPKIXPublicKey(others)
	require.NoError(t, err)
	return readKey(t, pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: ownBytes})), readKey(t, pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: othersBytes}))
}

func readKey(t *testing.T, text []byte) *rulebook.Key {
	t.Helper()
	k, err := rulebook.ReadKey(text)
	require.NoError(t, err)
	return k
}

func signed(t *testing.T, key *rulebook.Key) folder.Memory {
	t.Helper()
	files := folder.Memory{"pack.yaml": []byte(head), "rules/facts.yaml": []byte(permitFact), "rules/county/no-permit.rego": []byte(rule)}
	text, err := key.Sign(files)
	require.NoError(t, err)
	files[".signatures.json"] = text
	return files
}

func TestSignedPackIsTaken(t *testing.T) {
	for _, kind := range []string{"ES256", "RS256", "EdDSA", "secret"} {
		t.Run(kind, func(t *testing.T) {
			private, public := pair(t, kind)
			p, err := rulebook.OpenPack(signed(t, private), public)
			require.NoError(t, err)
			assert.True(t, p.Signed)
		})
	}
}

func TestChangedPackIsRefused(t *testing.T) {
	private, public := pair(t, "ES256")
	other, _ := pair(t, "ES256")
	for name, c := range map[string]struct {
		change func(m folder.Memory)
		want   string
	}{
		"unsigned":        {func(m folder.Memory) { delete(m, ".signatures.json") }, "it carries no signature"},
		"changed":         {func(m folder.Memory) { m["rules/facts.yaml"] = append(m["rules/facts.yaml"], '\n') }, "rules/facts.yaml was changed after the signing"},
		"added":           {func(m folder.Memory) { m["rules/sources.yaml"] = []byte("a: {title: b, by: c}\n") }, "rules/sources.yaml was added after the signing"},
		"taken out":       {func(m folder.Memory) { delete(m, "rules/county/no-permit.rego") }, "rules/county/no-permit.rego was taken out after the signing"},
		"another's":       {func(m folder.Memory) { maps.Copy(m, signed(t, other)) }, "its signature was not made with this key"},
		"no token":        {func(m folder.Memory) { m[".signatures.json"] = []byte(`{"signatures": []}`) }, "its signature was not made with this key"},
		"no JSON":         {func(m folder.Memory) { m[".signatures.json"] = []byte(`signed, honest`) }, "cannot be read"},
		"own plugin":      {func(m folder.Memory) { m[".signatures.json"] = []byte(`{"plugin": "x", "signatures": ["a.b.c"]}`) }, "its signature was not made with this key"},
		"by no algorithm": {unsign, "its signature was not made with this key"},
	} {
		t.Run(name, func(t *testing.T) {
			files := signed(t, private)
			c.change(files)
			_, err := rulebook.OpenPack(files, public)
			require.Error(t, err)
			assert.Contains(t, err.Error(), c.want)
		})
	}
}

// unsign replaces the header of the token by one that asks for no check.
func unsign(m folder.Memory) {
	parts := strings.Split(string(m[".signatures.json"]), ".")
	m[".signatures.json"] = []byte(`{"signatures": ["eyJhbGciOiJub25lIn0.` + parts[1] + `."]}`)
}

func TestKeyThatCannotBeUsedSaysWhy(t *testing.T) {
	weak, err := rsa.GenerateKey(rand.Reader, 1024)
	require.NoError(t, err)
	for name, c := range map[string]struct{ text, want string }{
		"short secret": {"sesame", "a shared secret of at least 32 letters"},
		"short key":    {string(pem.EncodeToMemory(&pem.Block{Type: "RSA PRIVATE KEY", Bytes: x509.MarshalPKCS1PrivateKey(weak)})), "has 1024 bits"},
		"other block":  {"-----BEGIN LETTER-----\nAAAA\n-----END LETTER-----\n", "is no key that signs"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := rulebook.ReadKey([]byte(c.text))
			require.Error(t, err)
			assert.Contains(t, err.Error(), c.want)
		})
	}
	private, public := pair(t, "ES256")
	_, err = public.Sign(folder.Memory{})
	assert.ErrorContains(t, err, "sign with the private one")
	assert.ErrorContains(t, private.Verify(signed(t, private)), "check signatures with the public one")
}
