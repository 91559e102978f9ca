package wainbook.engineering.measurement;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Working;

/** The check character that guards a serial number against slips of the hand (ISO/IEC 7064). */
public final class CheckCharacter implements Calculation<CheckCharacter.Inputs, CheckCharacter.Results> {

    /** @param text without its check character, of the scheme's own characters only */
    public record Inputs(Scheme scheme, String text) implements Checked {

        private static final int LONGEST = 1000;

        @Override
        public List<Fault> faults() {
            if (text.isEmpty() || text.length() > LONGEST) {
                return List.of(Fault.of("text", "length", 1, LONGEST));
            }
            return text.chars().allMatch(character -> scheme.alphabet().indexOf(character) >= 0)
                    ? List.of()
                    : List.of(Fault.of("text", "alphabet", scheme.alphabet()));
        }
    }

    public record Results(String check) {}

    @Override
    public String name() {
        return "check-character";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.seen("ISO/IEC 7064, as its open implementations restate it", "the scheme named"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        String check = in.scheme().check(in.text());
        return Answer.worked(new Working<>(
                new Results(check),
                Optional.empty(),
                Sentence.of("engineering.check-character.none", check, in.scheme()),
                List.of(in.scheme().step(in.text())),
                sources(),
                List.of()));
    }
}
