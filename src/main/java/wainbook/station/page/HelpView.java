package wainbook.station.page;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.page.Option;
import wainbook.station.StationSaying.Help;
import wainbook.station.help.HelpCall;

/**
 * One call for help as its page shows it.
 *
 * @param reader who looks at it
 */
public record HelpView(String order, HelpCall call, String reader) {

    /** An open call as a line on the station page; who may come says so there and then. */
    public record Line(String path, HelpCall call, boolean mayAnswer) {}

    static List<Line> open(String order, History history, String reader) {
        return HelpCall.open(history).stream()
                .map(call -> new HelpView(order, call, reader))
                .map(view -> new Line(view.path(), view.call(), view.mayAnswer()))
                .toList();
    }

    /** Who can be called. */
    static List<Option> helps() {
        return Arrays.stream(Help.values())
                .map(help -> new Option(help.name(), HelpCall.word(help)))
                .toList();
    }

    /** Back to the station where there is one to go back to. */
    static String after(String order, History history) {
        boolean atStage = WorkOrder.of(history).flatMap(WorkOrder::stage).isPresent();
        return (atStage ? "/station/" : "/orders/") + order;
    }

    public String path() {
        return HelpCall.path(order, call.number());
    }

    public boolean mayAnswer() {
        return call.isOpen() && call.answered().isEmpty() && !call.calledBy().equals(reader);
    }

    public UUID answerId() {
        return UUID.randomUUID();
    }
}
