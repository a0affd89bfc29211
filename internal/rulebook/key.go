package rulebook

import (
	"bytes"
	"crypto/ecdsa"
	"crypto/ed25519"
	"crypto/rsa"
	"crypto/x509"
	"encoding/hex"
	"encoding/json"
	"encoding/pem"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/bundle"
	"github.com/open-policy-agent/opa/v1/util"

	"hearsay/internal/folder"
)

// signaturesFile holds the signature of a pack or a bundle, in the form of Open Policy Agent: a token over the hashes of all
// other files.
const signaturesFile = ".signatures.json"

// keyName is the name of the key within a signature. It is the one that Open Policy Agent takes where none is given.
const keyName = "default"

// shortestSecret is the least length of a shared secret, in bytes.
const shortestSecret = 32

// leastRSA is the least length of an RSA key, in bits.
const leastRSA = 2048

// Key signs packs and bundles, or checks their signatures.
type Key struct {
	text      string
	algorithm string
	private   bool
	secret    bool
}

// ReadKey reads a key from its file: a PEM block of an ECDSA, Ed25519 or RSA key or a certificate, or the text of a shared
// secret.
func ReadKey(text []byte) (*Key, error) {
	block, _ := pem.Decode(text)
	if block == nil {
		secret := strings.TrimSpace(string(text))
		if len(secret) < shortestSecret {
			return nil, fmt.Errorf("it is neither a key in PEM form nor a shared secret of at least %d letters", shortestSecret)
		}
		return &Key{text: secret, algorithm: "HS256", secret: true}, nil
	}
	k := &Key{text: string(pem.EncodeToMemory(block))}
	key, err := parseKey(block)
	if err != nil {
		return nil, err
	}
	switch key := key.(type) {
	case *ecdsa.PrivateKey:
		k.private = true
		k.algorithm, err = curve(&key.PublicKey)
	case *ecdsa.PublicKey:
		k.algorithm, err = curve(key)
	case ed25519.PrivateKey:
		k.private, k.algorithm = true, "EdDSA"
	case ed25519.PublicKey:
		k.algorithm = "EdDSA"
	case *rsa.PrivateKey:
		k.private, k.algorithm, err = true, "RS256", longEnough(&key.PublicKey)
	case *rsa.PublicKey:
		k.algorithm, err = "RS256", longEnough(key)
	default:
		return nil, fmt.Errorf("keys of this kind (%T) do not sign: take ECDSA, Ed25519 or RSA", key)
	}
	return k, err
}

func parseKey(block *pem.Block) (any, error) {
	switch block.Type {
	case "PUBLIC KEY":
		return x509.ParsePKIXPublicKey(block.Bytes)
	case "RSA PUBLIC KEY":
		return x509.ParsePKCS1PublicKey(block.Bytes)
	case "PRIVATE KEY":
		return x509.ParsePKCS8PrivateKey(block.Bytes)
	case "RSA PRIVATE KEY":
		return x509.ParsePKCS1PrivateKey(block.Bytes)
	case "EC PRIVATE KEY":
		return x509.ParseECPrivateKey(block.Bytes)
	case "CERTIFICATE":
		c, err := x509.ParseCertificate(block.Bytes)
		if err != nil {
			return nil, err
		}
		return c.PublicKey, nil
	}
	return nil, fmt.Errorf("a PEM block %q is no key that signs", block.Type)
}

func curve(k *ecdsa.PublicKey) (string, error) {
	switch bits := k.Params().BitSize; bits {
	case 256:
		return "ES256", nil
	case 384:
		return "ES384", nil
	case 521:
		return "ES512", nil
	default:
		return "", fmt.Errorf("a curve of %d bits does not sign: take P-256", bits)
	}
}

func longEnough(k *rsa.PublicKey) error {
	if k.N.BitLen() < leastRSA {
		return fmt.Errorf("the RSA key has %d bits: take one of at least %d", k.N.BitLen(), leastRSA)
	}
	return nil
}

// Sign gives the content of the signature file for these files.
func (k *Key) Sign(files folder.Memory) ([]byte, error) {
	if !k.private && !k.secret {
		return nil, errors.New("this is the public key, with which signatures are checked: sign with the private one")
	}
	hash, err := bundle.NewSignatureHasher(bundle.SHA256)
	if err != nil {
		return nil, err
	}
	var list []bundle.FileInfo
	for _, name := range files.Names() {
		if name == signaturesFile {
			continue
		}
		var value any = files[name]
		if bundle.IsStructuredDoc(name) {
			if err := util.Unmarshal(files[name], &value); err != nil {
				return nil, fmt.Errorf("%s: %w", name, err)
			}
		}
		sum, err := hash.HashFile(value)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		list = append(list, bundle.NewFile(name, hex.EncodeToString(sum), string(bundle.SHA256)))
	}
	token, err := bundle.GenerateSignedToken(list, &bundle.SigningConfig{Key: k.text, Algorithm: k.algorithm}, keyName)
	if err != nil {
		return nil, fmt.Errorf("the key cannot sign: %w", err)
	}
	return json.MarshalIndent(bundle.SignaturesConfig{Signatures: []string{token}}, "", "  ")
}

// Verify fails unless the files carry a signature made with the counterpart of this key, over exactly these files.
func (k *Key) Verify(files folder.Memory) error {
	text, ok := files[signaturesFile]
	if !ok {
		return errors.New("it carries no signature, and a key was given to check one with: have it signed (`hearsay pack sign`), or give no key")
	}
	if k.private {
		return errors.New("this is a private key, which signs: check signatures with the public one")
	}
	var signed bundle.SignaturesConfig
	if err := json.Unmarshal(text, &signed); err != nil {
		return fmt.Errorf("%s cannot be read: %w", signaturesFile, err)
	}
	signed.Plugin = "" // what checks is chosen here, not in the file
	keys := map[string]*bundle.KeyConfig{keyName: {Key: k.text, Algorithm: k.algorithm}}
	left, err := bundle.VerifyBundleSignature(signed, bundle.NewVerificationConfig(keys, keyName, "", nil))
	if err != nil {
		return fmt.Errorf("its signature was not made with this key: %w", err)
	}
	for _, name := range files.Names() {
		if name == signaturesFile {
			continue
		}
		if f, ok := left[name]; !ok {
			return fmt.Errorf("%s was added after the signing", name)
		} else if f.Algorithm != string(bundle.SHA256) {
			return fmt.Errorf("%s is signed by its %s hash, which is not taken: sign it anew", name, f.Algorithm)
		}
		if err := bundle.VerifyBundleFile(name, *bytes.NewBuffer(files[name]), left); err != nil {
			return fmt.Errorf("%s was changed after the signing", name)
		}
	}
	if len(left) > 0 {
		return fmt.Errorf("%s was taken out after the signing", slices.Sorted(maps.Keys(left))[0])
	}
	return nil
}
