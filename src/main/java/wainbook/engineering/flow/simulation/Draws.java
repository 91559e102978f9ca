package wainbook.engineering.flow.simulation;

/**
 * An endless table of random numbers, looked up by key: SplitMix64's mixing, used without state. A number belongs to its vehicle,
 * stage, purpose and replication, so that one vehicle more or one station more shifts nobody else's numbers, and a what-if meets the
 * same luck.
 */
public final class Draws {

    private static final long GAMMA = 0x9E3779B97F4A7C15L;
    private static final double STEP = 0x1.0p-53;

    private Draws() {}

    /** The key that a seed begins with; also the first number of the SplitMix64 sequence of that seed. */
    public static long key(long seed) {
        return mix(seed + GAMMA);
    }

    /** The key one level deeper: of a vehicle, say, within its replication. */
    public static long key(long key, long part) {
        return mix(key + GAMMA * part);
    }

    /** The number of a key, from 0 up to but not 1, in steps of 2⁻⁵³. */
    public static double uniform(long key) {
        return (key >>> 11) * STEP;
    }

    private static long mix(long state) {
        long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
