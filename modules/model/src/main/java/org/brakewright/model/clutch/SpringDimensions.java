package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The diaphragm spring, measured: a coned rim with fingers. */
@Kind("spring_dimensions")
public record SpringDimensions(
        @Asked(
                label = "outside diameter",
                dimension = LENGTH,
                least = 0.08,
                most = 0.6,
                why = "springs of clutches lie within this")
        @Required("Across the spring.")
        Given outerDiameter,

        @Asked(
                label = "inside diameter of the closed rim",
                dimension = LENGTH,
                least = 0.05,
                most = 0.6,
                why = "springs of clutches lie within this")
        @Required("Across the ends of the slots.")
        Given rimInnerDiameter,

        @Asked(
                label = "thickness",
                dimension = LENGTH,
                least = 0.0008,
                most = 0.01,
                why = "springs of clutches lie within this")
        @Required("With a micrometer, on the rim.")
        Given thickness,

        @Asked(
                label = "height of the free cone of the rim",
                dimension = LENGTH,
                least = 0.0005,
                most = 0.02,
                why = "springs of clutches lie within this")
        @Required("Off the cover: from outer edge to inner edge of the rim, without the thickness.")
        Given coneHeight,

        @Asked(
                label = "diameter of the contact on the plate",
                dimension = LENGTH,
                least = 0.06,
                most = 0.6,
                why = "it lies near the outside of the spring")
        @Required("Across the ridge of the pressure plate.")
        Given pressDiameter,

        @Asked(
                label = "diameter of the ring it turns about",
                dimension = LENGTH,
                least = 0.05,
                most = 0.6,
                why = "it lies near the ends of the slots")
        @Required("Across the wire rings or rivets.")
        Given fulcrumDiameter,

        @Asked(
                label = "diameter of the bearing on the fingers",
                dimension = LENGTH,
                least = 0.02,
                most = 0.2,
                why = "release bearings lie within this")
        @Required("Across the track on the finger tips.")
        Given bearingDiameter,

        @Asked(
                label = "deflection at the plate when bolted down, new plate",
                dimension = LENGTH,
                least = 0.0005,
                most = 0.02,
                why = "springs of clutches lie within this")
        @Required("How much flatter the rim stands bolted to the flywheel than free, at the contact on the plate.")
        Given engagedDeflection,

        @Asked(
                label = "stiffness (Young's modulus)",
                dimension = PRESSURE,
                least = 1.5e11,
                most = 2.3e11,
                why = "spring steel lies within this")
        @Nullable
        Given modulus,

        @Asked(
                label = "stiffness of all fingers together at their tips",
                dimension = STIFFNESS,
                least = 2.0e5,
                most = 5.0e7,
                why = "fingers of clutches lie within this")
        @Nullable
        Given fingerStiffness)
        implements Diaphragm {}
