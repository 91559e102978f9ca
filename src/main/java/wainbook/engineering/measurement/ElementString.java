package wainbook.engineering.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * The parts of a GS1 element string as a scanner sends it: identifiers of fixed length follow one another, those of variable
 * length end at a separator (FNC1, sent as U+001D; ␝ is taken for it). Identifiers of part, lot, serial and count only.
 */
public final class ElementString implements Calculation<ElementString.Inputs, ElementString.Results> {

    private static final char SEPARATOR = '\u001d';
    private static final int LONGEST = 200;
    private static final Map<String, Integer> FIXED = Map.ofEntries(
            Map.entry("00", 18),
            Map.entry("01", 14),
            Map.entry("02", 14),
            Map.entry("11", 6),
            Map.entry("12", 6),
            Map.entry("13", 6),
            Map.entry("15", 6),
            Map.entry("16", 6),
            Map.entry("17", 6),
            Map.entry("20", 2));
    private static final Map<String, Integer> VARIABLE =
            Map.of("10", 20, "21", 20, "22", 20, "240", 30, "241", 30, "30", 8, "37", 8, "400", 30);

    public record Inputs(String text) implements Checked {
        @Override
        public List<Fault> faults() {
            return text.isEmpty() || text.length() > LONGEST
                    ? List.of(Fault.of("text", "length", 1, LONGEST))
                    : List.of();
        }
    }

    public record Element(String identifier, String content) {}

    /** @param hints what makes the reading doubtful */
    public record Results(boolean wellFormed, List<Element> elements, List<Sentence> hints) {
        public Results {
            elements = List.copyOf(elements);
            hints = List.copyOf(hints);
        }
    }

    @Override
    public String name() {
        return "element-string";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("GS1 syntax dictionary", "identifiers and their lengths"),
                Source.seen("A barcode library’s documentation, quoting ISO/IEC 16022", "separator, symbology prefix"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        String rest = in.text().replace('␝', SEPARATOR).replaceFirst("^](?:d2|C1|Q3|e0)", "");
        List<Element> elements = new ArrayList<>();
        List<Sentence> hints = new ArrayList<>();
        while (!rest.isEmpty() && hints.isEmpty()) {
            String now = rest.charAt(0) == SEPARATOR ? rest.substring(1) : rest;
            Optional<String> identifier = identifier(now);
            if (identifier.isEmpty()) {
                hints.add(Sentence.of("engineering.element-string.unknown", elements.size() + 1));
            } else {
                String after = now.substring(identifier.get().length());
                int length = length(identifier.get(), after);
                String content = after.substring(0, length);
                elements.add(new Element(identifier.get(), content));
                fault(identifier.get(), content).ifPresent(hints::add);
                rest = after.substring(length);
            }
        }
        boolean wellFormed = hints.isEmpty() && !elements.isEmpty();
        elements.forEach(element -> swallowed(element).ifPresent(hints::add));
        return found(
                new Results(wellFormed, elements, hints),
                Sentence.of(
                        wellFormed ? "engineering.element-string.read" : "engineering.element-string.malformed",
                        elements.size()),
                Step.of(
                        "elements",
                        "identifier, content; separator ends what has no fixed length",
                        elements.size(),
                        "",
                        "Σ"));
    }

    private static Optional<String> identifier(String text) {
        return List.of(2, 3).stream()
                .filter(length -> text.length() > length)
                .map(length -> text.substring(0, length))
                .filter(start -> FIXED.containsKey(start) || VARIABLE.containsKey(start))
                .findFirst();
    }

    private static int length(String identifier, String after) {
        int end = after.indexOf(SEPARATOR) < 0 ? after.length() : after.indexOf(SEPARATOR);
        return Math.min(end, FIXED.getOrDefault(identifier, end));
    }

    private static Optional<Sentence> fault(String identifier, String content) {
        boolean fits = FIXED.containsKey(identifier)
                ? content.length() == FIXED.get(identifier) && content.chars().allMatch(c -> c >= '0' && c <= '9')
                : !content.isEmpty() && content.length() <= VARIABLE.get(identifier);
        if (!fits) {
            return Optional.of(Sentence.of("engineering.element-string.length", identifier));
        }
        return (identifier.equals("01") || identifier.equals("02")) && !checks(content)
                ? Optional.of(Sentence.of("engineering.element-string.check", identifier))
                : Optional.empty();
    }

    /** From the right ×3, ×1 and so on, to the next ten. */
    private static boolean checks(String digits) {
        int sum = 0;
        for (int place = 0; place < digits.length(); place++) {
            sum += (digits.charAt(digits.length() - 1 - place) - '0') * (place % 2 == 0 ? 1 : 3);
        }
        return sum % 10 == 0;
    }

    /** A lot or serial that holds another identifier may have lost its separator on the way. */
    private static Optional<Sentence> swallowed(Element element) {
        return List.of("10", "21").stream()
                .filter(other -> VARIABLE.containsKey(element.identifier()) && !other.equals(element.identifier()))
                .filter(other -> element.content().indexOf(other, 1) > 0
                        && element.content().indexOf(other, 1)
                                < element.content().length() - 2)
                .map(other -> Sentence.of("engineering.element-string.swallowed", element.identifier(), other))
                .findFirst();
    }
}
