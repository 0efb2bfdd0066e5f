package org.brakewright.kernel.friction;

import java.util.SplittableRandom;

/** Shoes of the sizes that cars have, drawn by a seed; ranges are ours. */
final class Shoes {
    private Shoes() {}

    static DrumShoe any(SplittableRandom random) {
        double radius = random.nextDouble(0.08, 0.18);
        double pivot = radius * random.nextDouble(0.7, 0.9);
        return new DrumShoe(
                pivot,
                radius,
                random.nextDouble(0, 0.6),
                random.nextDouble(1.8, 2.5),
                pivot * random.nextDouble(1.6, 2));
    }

    /** Two shoes of one duo-servo drum: link below, anchor above the cylinder. */
    static DuoServo duo(SplittableRandom random) {
        double radius = random.nextDouble(0.1, 0.18);
        double link = radius * random.nextDouble(0.7, 0.85);
        double anchor = radius * random.nextDouble(0.75, 0.9);
        double cylinder = anchor * random.nextDouble(0.6, 1);
        return new DuoServo(
                new DrumShoe(link, radius, random.nextDouble(0.1, 0.6), random.nextDouble(1.8, 2.5), link + cylinder),
                new DrumShoe(anchor, radius, random.nextDouble(0.1, 0.6), random.nextDouble(1.8, 2.5), link + anchor));
    }
}
