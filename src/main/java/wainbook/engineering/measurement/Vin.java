package wainbook.engineering.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.engineering.Always;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * Form and check digit of a vehicle identification number: 17 of A–Z and 0–9 without I, O and Q; position 9 is the weighted
 * sum modulo 11, with X for 10 (49 CFR 565.15). Outside North America no check digit is asked for, so that a wrong one is a
 * question and never a bar. Letters may come in lower case and spaces around are ignored, as from any keyboard.
 */
public final class Vin implements Calculation<Vin.Inputs, Vin.Results> {

    private static final int LENGTH = 17;
    private static final int CHECK_PLACE = 8;
    private static final String ALPHABET = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";
    private static final String VALUES = "012345678912345678123457923456789";
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
    private static final Map<Character, Character> NOT_USED = Map.of('O', '0', 'Q', '0', 'I', '1');
    private static final Map<Character, Character> LOOK_ALIKE =
            Map.of('S', '5', '5', 'S', 'B', '8', '8', 'B', 'Z', '2', '2', 'Z');

    public record Inputs(String vin) {}

    /**
     * @param computedCheck what position 9 would be by the sum; none if the number is malformed
     * @param hints what was likely meant
     */
    public record Results(
            boolean wellFormed, @Always Optional<String> computedCheck, boolean checkMatches, List<Sentence> hints) {
        public Results {
            hints = List.copyOf(hints);
        }
    }

    @Override
    public String name() {
        return "vin";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("49 CFR 565.15", "values, weights and check digit"),
                Source.seen(
                        "ISO 3779 and ISO 3780, as restated in overviews", "length, characters, no check digit asked"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        String vin = upperCase(in.vin().strip());
        boolean wellFormed =
                vin.length() == LENGTH && vin.chars().allMatch(character -> ALPHABET.indexOf(character) >= 0);
        return Answer.worked(wellFormed ? judged(vin) : malformed(vin));
    }

    private Working<Results> malformed(String vin) {
        List<Sentence> hints = new ArrayList<>();
        if (vin.length() != LENGTH) {
            hints.add(Sentence.of("engineering.vin.length", vin.length(), LENGTH));
        }
        for (int place = 0; place < Math.min(vin.length(), LENGTH); place++) {
            char written = vin.charAt(place);
            if (ALPHABET.indexOf(written) < 0) {
                hints.add(
                        NOT_USED.containsKey(written)
                                ? Sentence.of("engineering.vin.perhaps", place + 1, written, NOT_USED.get(written))
                                : Sentence.of("engineering.vin.notUsed", place + 1));
            }
        }
        Results results = new Results(false, Optional.empty(), false, hints);
        return working(results, "engineering.vin.malformed", List.of());
    }

    private Working<Results> judged(String vin) {
        char computed = check(vin);
        boolean matches = computed == vin.charAt(CHECK_PLACE);
        List<Sentence> hints = matches
                ? List.of()
                : IntStream.range(0, LENGTH)
                        .filter(place -> likely(vin, place))
                        .mapToObj(place -> Sentence.of(
                                "engineering.vin.perhaps", place + 1, vin.charAt(place), alike(vin.charAt(place))))
                        .toList();
        Results results = new Results(true, Optional.of(String.valueOf(computed)), matches, hints);
        Step step = Step.of(
                "weightedSum", "Σ value · weight; check = Σ mod 11, 10 is X", sum(vin), "", "%s mod 11", sum(vin));
        return working(results, matches ? "engineering.vin.matches" : "engineering.vin.differs", List.of(step));
    }

    private Working<Results> working(Results results, String because, List<Step> steps) {
        Sentence sentence = Sentence.of(because, results.computedCheck().orElse(""));
        return new Working<>(results, Optional.empty(), sentence, steps, sources(), List.of());
    }

    private static boolean likely(String vin, int place) {
        char other = alike(vin.charAt(place));
        String changed = vin.substring(0, place) + other + vin.substring(place + 1);
        return other != vin.charAt(place) && check(changed) == changed.charAt(CHECK_PLACE);
    }

    private static char alike(char written) {
        return LOOK_ALIKE.getOrDefault(written, written);
    }

    private static char check(String vin) {
        return "0123456789X".charAt(sum(vin) % 11);
    }

    private static int sum(String vin) {
        return IntStream.range(0, LENGTH)
                .map(place -> WEIGHTS[place] * (VALUES.charAt(ALPHABET.indexOf(vin.charAt(place))) - '0'))
                .sum();
    }

    /** Only a–z: a general upper case would turn other scripts' letters into ours, or one letter into two. */
    private static String upperCase(String text) {
        StringBuilder upper = new StringBuilder(text);
        for (int i = 0; i < upper.length(); i++) {
            char letter = upper.charAt(i);
            if (letter >= 'a' && letter <= 'z') {
                upper.setCharAt(i, (char) (letter - 'a' + 'A'));
            }
        }
        return upper.toString();
    }
}
