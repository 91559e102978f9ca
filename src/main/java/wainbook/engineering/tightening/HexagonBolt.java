package wainbook.engineering.tightening;

import java.util.Arrays;
import java.util.Optional;

/**
 * Hexagon bolts by size: coarse pitch (ISO 261, from memory) and the mean bearing diameter under the head, from the least
 * bearing face of grade A (ISO 4014, from memory) and the medium clearance hole (ISO 273, from memory).
 */
public enum HexagonBolt {
    M6(6, 1, 8.88, 6.6),
    M8(8, 1.25, 11.63, 9),
    M10(10, 1.5, 14.63, 11),
    M12(12, 1.75, 16.63, 13.5),
    M14(14, 2, 19.64, 15.5),
    M16(16, 2, 22.49, 17.5),
    M18(18, 2.5, 25.34, 20),
    M20(20, 2.5, 28.19, 22),
    M22(22, 2.5, 31.71, 24),
    M24(24, 3, 33.61, 26);

    private final int diameterMm;
    private final double coarsePitchMm;
    private final double faceMm;
    private final double holeMm;

    HexagonBolt(int diameterMm, double coarsePitchMm, double faceMm, double holeMm) {
        this.diameterMm = diameterMm;
        this.coarsePitchMm = coarsePitchMm;
        this.faceMm = faceMm;
        this.holeMm = holeMm;
    }

    public static Optional<HexagonBolt> ofDiameter(int diameterMm) {
        return Arrays.stream(values())
                .filter(bolt -> bolt.diameterMm == diameterMm)
                .findFirst();
    }

    public int diameterMm() {
        return diameterMm;
    }

    public double coarsePitchMm() {
        return coarsePitchMm;
    }

    public double bearingMeanMm() {
        return (faceMm + holeMm) / 2;
    }
}
