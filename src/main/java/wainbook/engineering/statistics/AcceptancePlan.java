package wainbook.engineering.statistics;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Single sampling of a lot by attributes, normal inspection (ISO 2859-1): code letter by lot and level, sample and acceptance
 * number by letter and acceptance quality limit. An arrow leads to the next letter with its sample; a sample as large as the lot
 * means every piece.
 */
public final class AcceptancePlan implements Calculation<AcceptancePlan.Inputs, AcceptancePlan.Results> {

    private static final String LETTERS = "ABCDEFGHJKLMN";
    private static final int[] SAMPLES = {2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500};
    private static final int[] LOT_TO = {8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10_000, 35_000};
    private static final String[] BY_LEVEL = {
        "AAB", "ABC", "BCD", "CDE", "CEF", "DFG", "EGH", "FHJ", "GJK", "HKL", "JLM", "KMN"
    };
    private static final double[] AQL = {0.65, 1, 1.5, 2.5, 4, 6.5};
    /** By letter A to L and the six limits; v and ^ are the arrows. */
    private static final String[] ACCEPT = {
        "v v v v v 0",
        "v v v v 0 ^",
        "v v v 0 ^ v",
        "v v 0 ^ v 1",
        "v 0 ^ v 1 2",
        "0 ^ v 1 2 3",
        "^ v 1 2 3 5",
        "v 1 2 3 5 7",
        "1 2 3 5 7 10",
        "2 3 5 7 10 14",
        "3 5 7 10 14 21"
    };

    /** Inspection level: how much is looked at for a lot of this size. */
    public enum Level {
        I(0),
        II(1),
        III(2);

        private final int place;

        Level(int place) {
            this.place = place;
        }
    }

    /** @param faultyShare to see how often a lot that is so bad is taken all the same */
    public record Inputs(
            @Domain(from = 2, to = 3200) int lot,
            @Preset("\"II\"") Level level,
            @Domain(oneOf = {0.65, 1, 1.5, 2.5, 4, 6.5}) double acceptanceQualityLimit,
            Optional<@Domain(from = 0, to = 1) Double> faultyShare) {}

    /**
     * @param letter by lot and level, before any arrow
     * @param everyPiece the sample is the whole lot
     * @param acceptProbability of a lot with the share asked
     */
    public record Results(
            String letter,
            String planLetter,
            int sample,
            int accept,
            int reject,
            boolean everyPiece,
            Optional<Double> acceptProbability) {}

    @Override
    public String name() {
        return "acceptance-plan";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.seen(
                "ISO 2859-1, as two agreeing public tables of it and of MIL-STD-105E have it",
                "single sampling, normal inspection"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.classANotBySample"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        char letter = letter(in.lot(), in.level());
        int row = plan(LETTERS.indexOf(letter), column(in.acceptanceQualityLimit()));
        int accept = Integer.parseInt(cell(row, column(in.acceptanceQualityLimit())));
        boolean every = SAMPLES[row] >= in.lot();
        int sample = every ? in.lot() : SAMPLES[row];
        Optional<Double> chance = in.faultyShare()
                .map(share -> BinomialDistribution.of(sample, share).cumulativeProbability(accept));
        return found(
                new Results(
                        String.valueOf(letter),
                        String.valueOf(LETTERS.charAt(row)),
                        sample,
                        accept,
                        accept + 1,
                        every,
                        chance),
                Sentence.of("engineering.acceptance-plan.none", sample, accept, accept + 1),
                Step.of(
                        "sampleSize",
                        "letter by lot and level, arrows followed",
                        sample,
                        "",
                        "%s → %s",
                        letter,
                        LETTERS.charAt(row)));
    }

    private static char letter(int lot, Level level) {
        int row = 0;
        while (lot > LOT_TO[row]) {
            row++;
        }
        return BY_LEVEL[row].charAt(level.place);
    }

    private static int column(double limit) {
        int column = 0;
        while (AQL[column] != limit) {
            column++;
        }
        return column;
    }

    private static int plan(int row, int column) {
        return switch (cell(row, column)) {
            case "v" -> plan(row + 1, column);
            case "^" -> plan(row - 1, column);
            default -> row;
        };
    }

    private static String cell(int row, int column) {
        return ACCEPT[row].split(" ")[column];
    }
}
