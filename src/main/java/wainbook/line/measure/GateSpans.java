package wainbook.line.measure;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.flow.status.StationPast.Span;
import wainbook.gate.past.Answer;
import wainbook.gate.past.Stay;

/**
 * When nothing more was to be done before a gate's signature, and when a signature held, of one stay.
 *
 * @param done up to each answer, from the last that settled something before it
 * @param signed from a signature until the evidence changed
 */
record GateSpans(List<Span> done, List<Span> signed) {

    /** @param doneSince what is known of a gate that is not answered yet */
    static GateSpans of(Stay stay, Optional<Instant> doneSince) {
        var done = new ArrayList<Span>();
        var signed = new ArrayList<Span>();
        Optional<Answer> last = Optional.empty();
        for (Answer answer : stay.answers()) {
            ready(stay, last, answer).ifPresent(from -> done.add(LinePast.span(from, Optional.of(answer.at()))));
            if (answer.signed()) {
                signed.add(LinePast.within(stay, answer.at(), answer.changed()));
            }
            last = Optional.of(answer);
        }
        if (stay.left().isEmpty()) {
            doneSince.ifPresent(from -> done.add(LinePast.within(stay, from, Optional.empty())));
        }
        return new GateSpans(done, signed);
    }

    /** What was refused is not ready before something was done about it. */
    private static Optional<Instant> ready(Stay stay, Optional<Answer> last, Answer answer) {
        Instant from = last.map(Answer::at).orElse(stay.arrived());
        Optional<Instant> settled = answer.settled().filter(at -> at.isAfter(from));
        boolean asked = last.isEmpty() || last.get().signed();
        return settled.isPresent() || !asked ? settled : Optional.of(from);
    }
}
