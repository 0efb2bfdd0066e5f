package org.brakewright.model;

import org.brakewright.model.brake.WheelBrake;
import org.brakewright.model.clutch.Clutch;
import org.brakewright.model.footwell.Footwell;
import org.brakewright.model.heat.Heat;
import org.brakewright.model.hydraulics.ApplySystem;
import org.brakewright.model.hydraulics.Fluid;
import org.brakewright.model.hydraulics.Lines;
import org.brakewright.model.intent.Intent;
import org.brakewright.model.lines.Plumbing;
import org.brakewright.model.mount.Mount;
import org.brakewright.model.parking.Parking;
import org.brakewright.model.pedal.Pedal;
import org.brakewright.model.proof.Checks;
import org.brakewright.model.shop.Shop;
import org.brakewright.model.stop.Stops;
import org.brakewright.model.vehicle.Car;
import org.jspecify.annotations.Nullable;

/** One car as its builder wrote it down; may lack things. Null means not given. */
public record Build(
        @Label(value = "file format", how = "1 for this version.") @Required("Write format: 1.")
        int format,

        @Label("name of the car") @Required("Any name you know the car by.")
        String name,

        @Label("story of the car") @Nullable String story,

        @Label("the car") @Required("Weigh it and measure the wheelbase.")
        Car car,

        @Label("front brakes") @Required("State what stops the front wheels.")
        WheelBrake front,

        @Label("rear brakes") @Required("State what stops the rear wheels.")
        WheelBrake rear,

        @Label("brake pedal") @Required("Measure the pedal.")
        Pedal pedal,

        @Label("apply system") @Required("State what pushes the fluid.")
        ApplySystem apply,

        @Label("lines") @Nullable Lines lines,
        @Label("fluid") @Nullable Fluid fluid,

        @Label(value = "parking brake", how = "What holds the car when nobody is in it.") @Nullable
        Parking parking,

        @Label(value = "heat", how = "What the car is put through, and what its brakes are made of as heat sees it.")
        @Nullable
        Heat heat,

        @Label(value = "clutch", how = "What releases the clutch, for a hydraulic release with a bearing that pushes.")
        @Nullable
        Clutch clutch,

        @Label(
                value = "mount",
                how = "The firewall or bracket that carries the pedal, to compute how far it gives way.")
        @Nullable
        Mount mount,

        @Label(
                value = "stops over time",
                how = "Empty for everyday values: then whole stops are followed, wheels slipping.")
        @Nullable
        Stops stops,

        @Label("intent") @Required("State what the car is for.")
        Intent intent,

        @Label("checks on the car") @Nullable Checks checks,

        @Label(value = "shop", how = "What is folded of sheet and joined of tube, for flat patterns and templates.")
        @Nullable
        Shop shop,

        @Label(
                value = "routes of the lines",
                how = "Where tubes and hoses run and what they join, for bend tables, cut list and bleeding order.")
        @Nullable
        Plumbing plumbing,

        @Label(value = "footwell", how = "Pads side by side and what stands round them, for gaps and heel and toe.")
        @Nullable
        Footwell footwell) {

    /**
     * The same build without what no push at the brake pedal depends on: heat, clutch, stops over time, shop, routes and footwell. The
     * mount stays, for the pedal goes as far as it gives way.
     */
    public Build brakesOnly() {
        return new Build(
                format, name, story, car, front, rear, pedal, apply, lines, fluid, parking, null, null, mount, null,
                intent, checks, null, null, null);
    }

    /** The same build with another heat. */
    public Build with(Heat other) {
        return new Build(
                format, name, story, car, front, rear, pedal, apply, lines, fluid, parking, other, clutch, mount, stops,
                intent, checks, shop, plumbing, footwell);
    }
}
