package wainbook.engineering.energy.driving;

import java.util.function.Function;

/** What comes of driving a trace. */
public sealed interface Driven {

    /** The whole way was driven. */
    record Whole(Kinematics kinematics, Energies energies) implements Driven {
        public Spent spent() {
            return Spent.of(energies);
        }

        @Override
        public <T> T fold(Function<? super Whole, ? extends T> whole, Function<? super Beyond, ? extends T> beyond) {
            return whole.apply(this);
        }
    }

    /**
     * The packs cannot give what a second asks.
     *
     * @param interval counted from 1
     */
    record Beyond(int interval, double neededW, double greatestW) implements Driven {
        @Override
        public <T> T fold(Function<? super Whole, ? extends T> whole, Function<? super Beyond, ? extends T> beyond) {
            return beyond.apply(this);
        }
    }

    <T> T fold(Function<? super Whole, ? extends T> whole, Function<? super Beyond, ? extends T> beyond);

    /** Second by second, in the order of time, since full packs take nothing back. */
    static Driven over(Trace trace, Vehicle vehicle, Battery battery) {
        var energies = new EnergySums(battery, vehicle.kineticJ(trace.gain()));
        for (int k = 1; k <= trace.intervals(); k++) {
            Second second = Second.of(trace.motion(k), vehicle, energies.full());
            if (!battery.delivers(second.terminalW())) {
                return new Beyond(k, second.terminalW(), battery.greatestW());
            }
            energies.add(second, vehicle.consumersW());
        }
        return new Whole(Kinematics.of(trace), energies.total());
    }
}
