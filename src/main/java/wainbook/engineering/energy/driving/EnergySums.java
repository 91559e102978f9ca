package wainbook.engineering.energy.driving;

/** Adds up the seconds of a way, in joules. */
final class EnergySums {

    private static final double JOULES_A_KWH = 3.6e6;

    private final Battery battery;
    private final double kinetic;
    private int seconds;
    private double pack;
    private double traction;
    private double rolling;
    private double air;
    private double grade;
    private double braking;
    private double drawn;
    private double regenerated;
    private double consumers;
    private double loss;
    private double squares;
    private double highest = Double.NEGATIVE_INFINITY;
    private double lowest = Double.POSITIVE_INFINITY;

    /** @param kinetic of the end less that of the beginning: the sum of all seconds, without its rounding */
    EnergySums(Battery battery, double kinetic) {
        this.battery = battery;
        this.kinetic = kinetic;
    }

    /** Whether the packs have taken all that they had room for. */
    boolean full() {
        return battery.roomKwh().filter(room -> -pack >= room * JOULES_A_KWH).isPresent();
    }

    void add(Second second, double consumersW) {
        double speed = second.motion().speedMps();
        double current = battery.currentA(second.terminalW());
        seconds++;
        pack += battery.openV() * current;
        traction += Math.max(0, second.wheelW());
        braking += Math.max(0, -second.wheelW());
        rolling += second.forces().rollingN() * speed;
        air += second.forces().airN() * speed;
        grade += second.forces().gradeN() * speed;
        drawn += Math.max(0, second.drawnW());
        regenerated += Math.max(0, -second.drawnW());
        consumers += consumersW;
        loss += battery.lossW(current);
        squares += current * current;
        highest = Math.max(highest, second.terminalW());
        lowest = Math.min(lowest, second.terminalW());
    }

    Energies total() {
        return new Energies(
                pack / JOULES_A_KWH,
                traction / JOULES_A_KWH,
                rolling / JOULES_A_KWH,
                air / JOULES_A_KWH,
                grade / JOULES_A_KWH,
                kinetic / JOULES_A_KWH,
                braking / JOULES_A_KWH,
                drawn / JOULES_A_KWH,
                regenerated / JOULES_A_KWH,
                consumers / JOULES_A_KWH,
                loss / JOULES_A_KWH,
                highest,
                lowest,
                Math.sqrt(squares / seconds));
    }
}
