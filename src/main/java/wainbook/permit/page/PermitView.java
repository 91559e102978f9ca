package wainbook.permit.page;

import java.util.List;
import java.util.Map;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.page.Words;
import wainbook.permit.Permit;
import wainbook.permit.PermitSaying;
import wainbook.permit.Precaution;
import wainbook.permit.Step;

/**
 * One permit with what can be done with it.
 *
 * @param against what stands against each step by whoever looks
 * @param conflicts what came between since it was issued
 */
public record PermitView(PermitLine line, Map<Step, List<Reason>> against, List<Reason> conflicts, Filled filled) {

    /** A precaution that was seen to. */
    public record Seen(String what, String naming, boolean person) {}

    public Permit permit() {
        return line.permit();
    }

    public List<Seen> precautions() {
        return permit().said().precautions().stream()
                .map(ticked -> new Seen(
                        Words.of("permit.precaution." + ticked.precaution().name()),
                        ticked.naming().orElse(""),
                        ticked.precaution().names() == Precaution.Names.PERSON))
                .toList();
    }

    public List<String> circumstances() {
        return permit().said().circumstances().stream()
                .map(trait -> Words.of("permit.trait." + trait.name()))
                .toList();
    }

    public boolean can(String step) {
        return against.get(Step.valueOf(step)).isEmpty();
    }

    /** What stands against the step that is due next. */
    public List<Reason> due() {
        Step next = permit().received().isEmpty()
                ? permit().stopped().isPresent() ? Step.CLOSE : Step.RECEIVE
                : permit().overAt().isEmpty() ? Step.HAND_BACK : Step.CLOSE;
        return permit().open() ? against.get(next) : List.of();
    }

    public String stopped() {
        return permit().stopped()
                .flatMap(entry -> ((PermitSaying.WorkStopped) entry.saying()).words())
                .orElse("");
    }

    public String handedBack() {
        return permit().handedBack()
                .flatMap(entry -> ((PermitSaying.PermitHandedBack) entry.saying()).words())
                .orElse("");
    }

    public String closed() {
        return permit().closed()
                .flatMap(entry -> ((PermitSaying.PermitClosed) entry.saying()).words())
                .orElse("");
    }
}
