package wainbook.engineering.flow.simulation;

/**
 * What a stage's stations do with their time. A station's time with a vehicle runs from the leaving of the vehicle before to its
 * own leaving, so the four make one.
 *
 * @param blocked done, in turn, and no place ahead
 * @param outOfTurn done, while the vehicle ahead is still at a station beside
 */
public record Shares(double working, double blocked, double starved, double outOfTurn) {

    /** Minutes of one stage, added up over the vehicles that passed. */
    static final class Sum {
        private double working;
        private double blocked;
        private double starved;
        private double outOfTurn;

        void add(Passage passage, int stage) {
            working += passage.done(stage) - passage.begun(stage);
            blocked += passage.blocked(stage);
            starved += passage.starved(stage);
            outOfTurn += passage.outOfTurn(stage);
        }

        Shares shares() {
            double all = working + blocked + starved + outOfTurn;
            return new Shares(working / all, blocked / all, starved / all, outOfTurn / all);
        }
    }
}
