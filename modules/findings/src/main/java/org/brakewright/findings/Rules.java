package org.brakewright.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.brakewright.findings.rules.AdhesionEfficiency;
import org.brakewright.findings.rules.AdjustableBalance;
import org.brakewright.findings.rules.AirInCircuit;
import org.brakewright.findings.rules.AllWheelsLock;
import org.brakewright.findings.rules.BalanceCases;
import org.brakewright.findings.rules.BarFloat;
import org.brakewright.findings.rules.BarRange;
import org.brakewright.findings.rules.BarTilt;
import org.brakewright.findings.rules.BestSetting;
import org.brakewright.findings.rules.CheckedOnCar;
import org.brakewright.findings.rules.ClutchClampLoad;
import org.brakewright.findings.rules.ClutchEffort;
import org.brakewright.findings.rules.ClutchOverTravel;
import org.brakewright.findings.rules.ClutchPedalReturn;
import org.brakewright.findings.rules.ClutchRelease;
import org.brakewright.findings.rules.ClutchSlaveStroke;
import org.brakewright.findings.rules.ClutchSlip;
import org.brakewright.findings.rules.ClutchWearRoom;
import org.brakewright.findings.rules.CoolingTime;
import org.brakewright.findings.rules.DrumSelfLock;
import org.brakewright.findings.rules.DrumSensitivity;
import org.brakewright.findings.rules.Fade;
import org.brakewright.findings.rules.FadeMargin;
import org.brakewright.findings.rules.FailedCircuit;
import org.brakewright.findings.rules.FluidBoiling;
import org.brakewright.findings.rules.FootOnTwoPedals;
import org.brakewright.findings.rules.FrontFirst;
import org.brakewright.findings.rules.FrontShare;
import org.brakewright.findings.rules.HeelAndToe;
import org.brakewright.findings.rules.HotBalance;
import org.brakewright.findings.rules.LineAir;
import org.brakewright.findings.rules.LineBurst;
import org.brakewright.findings.rules.LineClearance;
import org.brakewright.findings.rules.LineClips;
import org.brakewright.findings.rules.LineJoint;
import org.brakewright.findings.rules.LineStraights;
import org.brakewright.findings.rules.LiningTemperature;
import org.brakewright.findings.rules.MasterStroke;
import org.brakewright.findings.rules.MountBolts;
import org.brakewright.findings.rules.MountBuckling;
import org.brakewright.findings.rules.MountEndurance;
import org.brakewright.findings.rules.MountMovement;
import org.brakewright.findings.rules.MountProof;
import org.brakewright.findings.rules.MountStress;
import org.brakewright.findings.rules.MountWelds;
import org.brakewright.findings.rules.OverCentre;
import org.brakewright.findings.rules.ParkingHold;
import org.brakewright.findings.rules.PartRating;
import org.brakewright.findings.rules.PedalEffort;
import org.brakewright.findings.rules.PedalReserve;
import org.brakewright.findings.rules.PedalRoom;
import org.brakewright.findings.rules.PedalSpacing;
import org.brakewright.findings.rules.PedalTravel;
import org.brakewright.findings.rules.RearLocksFirst;
import org.brakewright.findings.rules.ReservoirVolume;
import org.brakewright.findings.rules.ResidualValve;
import org.brakewright.findings.rules.RodAngle;
import org.brakewright.findings.rules.RodLength;
import org.brakewright.findings.rules.RodThread;
import org.brakewright.findings.rules.RotorTemperature;
import org.brakewright.findings.rules.ServiceStop;
import org.brakewright.findings.rules.StopOverTime;
import org.brakewright.findings.rules.ValvePlacement;

/** All rules, in the order in which findings of the same state are told. */
public final class Rules {
    private static final List<Rule> ALL = List.of(
            new RearLocksFirst(),
            new BalanceCases(),
            new PedalEffort(),
            new PedalTravel(),
            new PedalReserve(),
            new OverCentre(),
            new MasterStroke(),
            new FailedCircuit(),
            new AirInCircuit(),
            new Fade(),
            new FrontShare(),
            new BarRange(),
            new BarTilt(),
            new BarFloat(),
            new RodLength(),
            new RodAngle(),
            new RodThread(),
            new LineJoint(),
            new LineBurst(),
            new LineStraights(),
            new LineClearance(),
            new LineAir(),
            new LineClips(),
            new PedalRoom(),
            new FootOnTwoPedals(),
            new HeelAndToe(),
            new PedalSpacing(),
            new MountMovement(),
            new MountStress(),
            new MountBolts(),
            new MountWelds(),
            new MountBuckling(),
            new MountEndurance(),
            new MountProof(),
            new PartRating(),
            new DrumSelfLock(),
            new DrumSensitivity(),
            new ValvePlacement(),
            new ResidualValve(),
            new ReservoirVolume(),
            new FluidBoiling(),
            new FadeMargin(),
            new HotBalance(),
            new LiningTemperature(),
            new RotorTemperature(),
            new CoolingTime(),
            new StopOverTime(),
            new ParkingHold(),
            new ClutchPedalReturn(),
            new ClutchRelease(),
            new ClutchOverTravel(),
            new ClutchSlaveStroke(),
            new ClutchWearRoom(),
            new ClutchSlip(),
            new ClutchClampLoad(),
            new ClutchEffort(),
            new ServiceStop(),
            new FrontFirst(),
            new AdhesionEfficiency(),
            new AllWheelsLock(),
            new BestSetting(),
            new AdjustableBalance(),
            new CheckedOnCar());

    /** Findings in the order of their rules. */
    static final Comparator<Finding> ORDER = Comparator.comparingInt(
            finding -> ALL.stream().map(Rule::key).toList().indexOf(finding.key()));

    private Rules() {}

    /** Every rule. */
    public static List<Rule> all() {
        return ALL;
    }

    /** Every judgement of every rule, without cures. */
    static List<Finding> judge(Facts facts) {
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : ALL) {
            findings.addAll(rule.judge(facts));
        }
        return findings;
    }
}
