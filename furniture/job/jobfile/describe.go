package jobfile

import (
	"fmt"
	"strconv"
	"strings"
	"time"
)

// describe says what a value is.
func describe(v any) string {
	switch v := v.(type) {
	case string:
		return clip(quote(v))
	case int64:
		return "the number " + strconv.FormatInt(v, 10)
	case float64:
		return "the number " + strconv.FormatFloat(v, 'g', -1, 64)
	case bool:
		return strconv.FormatBool(v)
	case time.Time:
		return "a date or time"
	case map[string]any:
		return "a table"
	case []map[string]any:
		return "a list of tables"
	case []any:
		return "a list"
	}
	return fmt.Sprint(v)
}

// clip keeps messages short.
func clip(text string) string {
	const longest = 60
	if r := []rune(text); len(r) > longest {
		return string(r[:longest]) + "..."
	}
	return text
}

// anyOf lists words in a sentence: "a, b or c".
func anyOf(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:len(words)-1], ", ") + " or " + words[len(words)-1]
}
