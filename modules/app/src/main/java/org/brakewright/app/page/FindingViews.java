package org.brakewright.app.page;

import java.util.List;
import org.brakewright.app.words.CureWords;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.cure.Cure;

/** Findings as the page shows them. */
final class FindingViews {
    private final FindingWords words;
    private final CureWords cures;

    FindingViews(Show show) {
        this.words = new FindingWords(show);
        this.cures = new CureWords(show);
    }

    List<PageView.Finding> of(List<Finding> findings) {
        return findings.stream().map(this::view).toList();
    }

    private PageView.Finding view(Finding finding) {
        return new PageView.Finding(
                finding.key(),
                FindingWords.key(finding.state()),
                FindingWords.word(finding.state()),
                words.title(finding),
                words.sentence(finding),
                words.number(finding),
                words.limit(finding),
                finding.limit() == null ? null : finding.limit().whose(),
                finding.limit() == null ? null : finding.limit().tag().words(),
                finding.cure() == null ? null : cure(finding.cure()),
                finding.state() == State.FINE || finding.cure() != null ? null : words.advice(finding),
                finding.inputs());
    }

    private PageView.Cure cure(Cure cure) {
        return new PageView.Cure(
                cures.sentence(cure),
                cures.edits(cure.change()).entrySet().stream()
                        .map(edit -> new PageView.Edit(edit.getKey(), edit.getValue()))
                        .toList());
    }
}
