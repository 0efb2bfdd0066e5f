package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** The clutch cover, as written; for a bearing that pushes. */
public record Cover(
        @Asked(
                label = "clamp load",
                dimension = FORCE,
                least = 500.0,
                most = 50000.0,
                why = "clutches of cars lie within this",
                how = "From the part sheet of the cover, new plate.")
        @Nullable
        Given clampLoad,

        @Asked(
                label = "finger travel over lift of the plate",
                dimension = RATIO,
                least = 1.0,
                most = 8.0,
                why = "fingers are a lever of this size",
                how = "Lift the plate on the bench: travel of the tips over lift of the plate.")
        @Nullable
        Given fingerRatio,

        @Label(
                value = "diaphragm",
                how =
                        "release_points: force at the bearing over its travel; spring_dimensions: measured on the spring.")
        @Nullable
        Diaphragm diaphragm,

        @Asked(
                label = "force at the bearing that frees it",
                dimension = FORCE,
                least = 100.0,
                most = 15000.0,
                why = "covers of cars lie within this",
                how = "Under a press with a scale: the greatest force until the plate turns freely.")
        @Nullable
        Given releaseLoad,

        @Asked(
                label = "bearing travel that frees it",
                dimension = LENGTH,
                least = 0.002,
                most = 0.03,
                why = "covers of cars lie within this",
                how = "From touching the fingers until the plate turns freely by hand.")
        @Nullable
        Given releaseTravel,

        @Asked(
                label = "most bearing travel allowed",
                dimension = LENGTH,
                least = 0.002,
                most = 0.04,
                why = "covers of cars lie within this",
                how = "From the part sheet: beyond it fingers touch the plate or the spring is strained.")
        @Nullable
        Given mostBearingTravel) {}
