package wainbook.handover.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.handover.FromEarlier;
import wainbook.handover.FromWaste;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.document.DocumentLine;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * The form by which a document is noted; what can be chosen depends on who asks.
 *
 * @param waste what the waste record could answer
 * @param earlier what was in hand under the vehicle's former order
 */
public record DocumentForm(
        DocumentLine line,
        boolean clerk,
        boolean mayWaive,
        Optional<FromWaste.Answer> waste,
        Optional<FromEarlier.Former> earlier) {

    public List<Option> states() {
        return Arrays.stream(State.values())
                .filter(state -> state == State.WAIVED ? mayWaive : clerk)
                .map(state -> new Option(state.name(), Words.of("handover.state." + state.name())))
                .toList();
    }

    public boolean onlyWaives() {
        return mayWaive && !clerk;
    }
}
