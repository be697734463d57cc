package session

import (
	"crypto/sha256"
	"encoding/hex"
	"os"
	"path/filepath"

	"github.com/gofrs/flock"
)

// A claim says that a job file is open in this session. The system takes it back when the program ends, however it ends.
type claim struct {
	lock  *flock.Flock
	taken bool // another window had the file open first
}

// claimed lays claim to a file, or to the one recovery copy of jobs without a file (path ""). Where no claim can be laid, because there is no folder for it, the session counts as alone.
func claimed(path, folder string) claim {
	if folder == "" {
		return claim{}
	}
	at := filepath.Join(folder, "open")
	if os.MkdirAll(at, 0o700) != nil {
		return claim{}
	}
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real
	}
	name := sha256.Sum256([]byte(path))
	lock := flock.New(filepath.Join(at, hex.EncodeToString(name[:8])+".lock"))
	mine, err := lock.TryLock()
	if err != nil || mine {
		return claim{lock: lock}
	}
	return claim{taken: true}
}

func (c claim) free() {
	if c.lock != nil {
		c.lock.Unlock()
	}
}

// Alone tells that no other window had the job's file open when this one opened it.
func (s *Session) Alone() bool { return !s.claim.taken }
