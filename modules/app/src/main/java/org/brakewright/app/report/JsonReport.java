package org.brakewright.app.report;

import java.util.Locale;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.ledger.LedgerEntry;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.app.words.CureWords;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.words.Verdict;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.cure.Cure;
import org.jspecify.annotations.Nullable;

/** The assessment as JSON. */
public final class JsonReport {
    private static final int FORMAT = 1;
    private static final Show SHOW = new Show(UnitSystem.METRIC);
    private static final FindingWords WORDS = new FindingWords(SHOW);
    private static final CureWords CURES = new CureWords(SHOW);

    private JsonReport() {}

    /** Everything of an assessment. */
    public static String write(Assessment assessment) {
        return Json.indented(result(assessment));
    }

    private static Result result(Assessment assessment) {
        Analysis analysis = assessment.analysis();
        Verdict verdict = Verdict.of(assessment, WORDS);
        return new Result(
                FORMAT,
                assessment.build().name(),
                new Result.VerdictText(FindingWords.key(verdict.state()), verdict.sentence()),
                assessment.headline(),
                assessment.findings().stream().map(JsonReport::finding).toList(),
                analysis.pedalRatio(),
                analysis.grip(),
                analysis.hardStop(),
                analysis.loadCases(),
                analysis.bar(),
                analysis.failures(),
                analysis.weakened(),
                analysis.panicPush(),
                analysis.effortFor(),
                analysis.stopsFrom(),
                assessment.ledger().stream().map(JsonReport::assumed).toList(),
                analysis.drums(),
                analysis.parking(),
                analysis.reservoirs(),
                analysis.drainBack(),
                analysis.pedal(),
                assessment.feel(),
                assessment.solution(),
                analysis.balanceCases(),
                analysis.advice(),
                analysis.clutch(),
                analysis.heat(),
                analysis.stops(),
                analysis.shop(),
                analysis.lines(),
                analysis.mount(),
                analysis.footwell());
    }

    private static Result.FindingText finding(Finding finding) {
        return new Result.FindingText(
                finding.key(),
                finding.subject(),
                FindingWords.key(finding.state()),
                WORDS.sentence(finding),
                finding.found() == null ? null : number(finding.found()),
                finding.limit() == null ? null : number(finding.limit().figure()),
                finding.limit() == null ? null : finding.limit().whose(),
                finding.limit() == null ? null : finding.limit().tag().words(),
                cure(finding.cure()),
                finding.inputs());
    }

    private static Result.@Nullable CureText cure(@Nullable Cure cure) {
        return cure == null
                ? null
                : new Result.CureText(
                        CURES.sentence(cure),
                        FindingWords.key(cure.becomes()),
                        cure.worse().stream().map(Finding::key).distinct().toList(),
                        cure.change().values());
    }

    private static Result.Figure number(Figure figure) {
        return new Result.Figure(figure.value(), figure.dimension().name().toLowerCase(Locale.ROOT));
    }

    private static Result.Assumed assumed(LedgerEntry entry) {
        Assumption assumption = entry.assumption();
        return new Result.Assumed(
                assumption.path(),
                assumption.title(),
                assumption.value(),
                assumption.low(),
                assumption.high(),
                assumption.dimension().name().toLowerCase(Locale.ROOT),
                assumption.basis(),
                assumption.tag().words(),
                assumption.byBuilder(),
                entry.atLow(),
                entry.atHigh());
    }
}
