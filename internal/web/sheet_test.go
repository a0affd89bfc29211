package web

import (
	"bytes"
	"context"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

var printedPage = regexp.MustCompile(`/Type\s*/Page\b`)

// TestChecklistPrintsOnTwoPages: whatever the job, the sheet goes on the front and back of one letter or A4 paper.
func TestChecklistPrintsOnTwoPages(t *testing.T) {
	browser, err := theBrowser()
	if err != nil {
		wanting(t, err.Error())
	}
	b, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	files, err := filepath.Glob("../../testdata/jobs/*.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		j, _, err := job.Read(b.Facts, file, text)
		require.NoError(t, err)
		review, err := b.Judge(context.Background(), j)
		require.NoError(t, err)
		var sheet bytes.Buffer
		require.NoError(t, report.NewChecklist(report.NewReview(b, review, quantity.US)).HTML(&sheet))
		ctx, end := chromedp.NewContext(browser)
		defer end()
		for name, size := range map[string][2]float64{"letter": {8.5, 11}, "A4": {8.27, 11.69}} {
			require.NoError(t, chromedp.Do(ctx, chromedp.Navigate("data:text/html;charset=utf-8,"+url.PathEscape(sheet.String()))))
			pdf, err := chromedp.Call(ctx, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: size[0], PaperHeight: size[1]})
			require.NoError(t, err)
			pages := len(printedPage.FindAll(pdf.Data, -1))
			assert.True(t, pages == 1 || pages == 2, "%s on %s paper: %d pages", file, name, pages)
		}
	}
}
