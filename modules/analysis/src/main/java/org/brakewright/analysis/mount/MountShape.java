package org.brakewright.analysis.mount;

import java.util.List;
import org.brakewright.analysis.mount.MountState.Asked;
import org.brakewright.analysis.mount.MountState.Dress;
import org.brakewright.model.resolved.ResolvedMount.Place;

/**
 * The mount to be looked at: what it is made of, and how it moves. Places and movements from the zero on the panel, m.
 *
 * @param sheets panel, patches and doublers
 * @param bars bars, arm and pushrod, and the ribs that stand for brackets
 * @param pushes the mount as built under each load, then with less on its panel in use
 */
public record MountShape(List<Sheet> sheets, List<Bar> bars, List<Push> pushes) {

    /**
     * A sheet, or the part of it that no other lies on.
     *
     * @param path in the build file
     * @param name of the part
     * @param points corners of triangles
     * @param triangles numbers of three points each, one after the other
     */
    public record Sheet(String path, String name, List<Place> points, List<Integer> triangles) {}

    /**
     * Something long.
     *
     * @param path in the build file; "mount.arm" and "mount.rod" are the pedal's own
     * @param name of the part
     * @param radius of a round bar of as much area, m
     * @param points along it
     */
    public record Bar(String path, String name, double radius, List<Place> points) {}

    /**
     * What a straight push does.
     *
     * @param dress how much is on the panel
     * @param asked what the load is for
     * @param footN force of the foot
     * @param padM movement of the pad along the foot
     * @param sheets movement and stress of each sheet
     * @param bars movement and stress of each bar; of one that is not there, none
     * @param highestPa greatest stress
     * @param worst where it is
     * @param bulge along the panel through the pivot, from below
     */
    public record Push(
            Dress dress,
            Asked asked,
            double footN,
            double padM,
            List<Moved> sheets,
            List<Moved> bars,
            double highestPa,
            Place worst,
            List<BulgePoint> bulge) {}

    /**
     * Movement of a part.
     *
     * @param shifts of each of its points, m
     * @param stresses von Mises, of each triangle or each piece between two points, Pa; 0 where it is not judged
     */
    public record Moved(List<Place> shifts, List<Double> stresses) {}

    /**
     * How far the panel is moved at a place.
     *
     * @param upM place along the panel
     * @param forwardM movement square to it
     */
    public record BulgePoint(double upM, double forwardM) {}
}
