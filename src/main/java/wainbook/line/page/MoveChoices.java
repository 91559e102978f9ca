package wainbook.line.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.line.move.MoveRules;
import wainbook.order.OrderSaying.Direction;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * The ways a vehicle can take from where it stands, and those that are barred, with their reasons.
 *
 * @param seen the number of the stream when this was looked at
 */
record MoveChoices(String order, long seen, List<Choice> choices) {

    /** One way: a direction with its destination. */
    record Choice(Direction direction, String to, Optional<String> stage, String label, List<Reason> against) {

        String value() {
            return direction + " " + to + stage.map(code -> " " + code).orElse("");
        }
    }

    MoveChoices {
        choices = List.copyOf(choices);
    }

    public String vehicle() {
        return "/orders/" + order;
    }

    public List<Option> open() {
        return choices.stream()
                .filter(choice -> choice.against().isEmpty())
                .map(choice -> new Option(choice.value(), choice.label()))
                .toList();
    }

    public List<Choice> barred() {
        return choices.stream().filter(choice -> !choice.against().isEmpty()).toList();
    }

    public List<Option> confirmations() {
        return MoveRules.CONFIRMED.stream()
                .map(key -> new Option(key, Words.of("line." + key)))
                .toList();
    }

    /** A way as a form sends it back; also one that is no longer open, so that its reasons are told. */
    static Optional<Choice> read(String value) {
        String[] parts = value.split(" ");
        return parts.length < 2 || parts.length > 3
                ? Optional.empty()
                : Arrays.stream(Direction.values())
                        .filter(direction -> direction.name().equals(parts[0]))
                        .findFirst()
                        .map(direction -> new Choice(
                                direction,
                                parts[1],
                                parts.length == 3 ? Optional.of(parts[2]) : Optional.empty(),
                                value,
                                List.of()));
    }
}
