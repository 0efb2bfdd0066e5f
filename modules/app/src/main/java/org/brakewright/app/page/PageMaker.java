package org.brakewright.app.page;

import java.util.List;
import java.util.Locale;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.Verdict;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.State;

/** Puts the page's data together from an assessment. */
public final class PageMaker {
    private static final List<String> CAUTIONS = List.of(
            "Brakes carry lives. This tool computes; it does not inspect. Local codes and licensed practice decide what may be driven, welded or changed.",
            "A calculation cannot show feel, noise, pull to one side, or the quality of the work: prove them on the stands and on an empty road, step by step.",
            "Never drive with a pushrod that is not retained, no free play, a pedal or bar that does not come back, a leak, a pedal that sinks, rear wheels that lock first, or no brake lights.",
            "Work under a car only on stands; brake fluid harms eyes and paint; asbestos may be in old linings.");

    private final Show show;
    private final FindingWords words;

    /** Makes pages in a system of units. */
    public PageMaker(Show show) {
        this.show = show;
        this.words = new FindingWords(show);
    }

    /**
     * What the page knows beside the assessment.
     *
     * @param revision counts up with every change
     * @param file name of the build file
     * @param demo whether it is the demo car
     * @param canUndo whether a change can be taken back
     * @param canRedo whether a change that was taken back can be made again
     */
    public record Frame(int revision, String file, boolean demo, boolean canUndo, boolean canRedo) {}

    /** The page of an assessment. */
    public PageView make(Assessment assessment, Frame frame) {
        Charts charts = new Charts(show, assessment);
        Tables tables = new Tables(show, assessment);
        return new PageView(
                frame.revision(),
                frame.file(),
                frame.demo(),
                show.system().name().toLowerCase(Locale.ROOT),
                assessment.build().name(),
                assessment.build().story(),
                frame.canUndo(),
                frame.canRedo(),
                verdict(assessment),
                new HeadlineCards(show).of(assessment),
                new FindingViews(show).of(assessment.findings()),
                ChainPicture.of(assessment),
                new LoadCases(show, charts, tables).of(assessment),
                charts.effort(),
                charts.travel(),
                new FeelView(show).chart(assessment),
                tables.travelBudget(),
                new FailureTable(show, assessment).table(),
                tables.stops(),
                new BalanceTables(show, assessment).all(),
                new LedgerRows(show).of(assessment),
                new Inputs(show).of(assessment),
                new WorkingViews(show).of(assessment),
                CAUTIONS,
                new DrumTable(show).of(assessment.analysis()),
                new ParkingTable(show).of(assessment.analysis()),
                new BarMaker(show).of(assessment),
                new PedalMaker(show).of(assessment),
                new ClutchPanel(show).of(assessment.analysis()),
                new HeatViews(show).of(assessment),
                new LineTables(show).of(assessment.analysis()),
                new MountPanel(show).of(assessment.analysis()),
                new FootwellPanel(show).of(assessment.analysis()));
    }

    /** What the stops over time of an assessment add to its page. */
    public StopsView stops(Assessment assessment, int revision) {
        return new StopsView(
                revision,
                verdict(assessment),
                new FindingViews(show).of(assessment.findings()),
                new StopViews(show).of(assessment.analysis().stops()));
    }

    private PageView.Verdict verdict(Assessment assessment) {
        Verdict verdict = Verdict.of(assessment, words);
        return new PageView.Verdict(
                FindingWords.key(verdict.state()),
                FindingWords.word(verdict.state()),
                verdict.sentence(),
                new PageView.Counts(
                        count(assessment, State.STOP),
                        count(assessment, State.CAUTION),
                        count(assessment, State.CANNOT_TELL),
                        count(assessment, State.FINE)));
    }

    private static long count(Assessment assessment, State state) {
        return assessment.findings().stream()
                .filter(finding -> finding.state() == state)
                .count();
    }
}
