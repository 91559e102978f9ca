package wainbook.gate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.order.fitted.Match;
import wainbook.page.Form;
import wainbook.page.RouteBar;
import wainbook.page.Words;
import wainbook.station.ItemState;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.words.ItemLine;
import wainbook.station.words.SayingInWords;
import wainbook.works.PersonInWords;

/**
 * What the gate page shows.
 *
 * @param refusals what the last try was refused for
 * @param maySign whether the reader is an inspector at all
 */
public record GateView(
        GateRules rules, String title, RouteBar bar, boolean maySign, List<Reason> refusals, Form form, UUID actId) {

    /** An entry in the evidence. */
    public record Line(
            long number,
            java.time.Instant at,
            String who,
            String text,
            Optional<TakenFromPaper> paper,
            Optional<String> file,
            boolean picture) {}

    public String signer() {
        return PersonInWords.name(gate().signed().orElseThrow().moment().who());
    }

    /** The id that a refusal would have; another than a signature's, so that neither stands for the other. */
    public UUID refusalId() {
        return UUID.randomUUID();
    }

    public Gate gate() {
        return rules.gate();
    }

    public String order() {
        return rules.order().number();
    }

    public String kind() {
        return rules.order().ordered().vehicleKind();
    }

    public String operator() {
        return rules.order().ordered().operator();
    }

    public String stage() {
        return gate().record().stage();
    }

    public List<Reason> against() {
        return rules.against();
    }

    public List<LookFirst.Point> first() {
        return LookFirst.at(gate().record());
    }

    public String standing() {
        return Words.of("gate.standing." + gate().standing().name());
    }

    /** A sort of part that was specified. */
    public String part(Match.Line line) {
        return line.part().isPresent() ? line.title() : Words.of("order.fittedPacks", line.title());
    }

    /** How many of it were specified and are fitted. */
    public String fitted(Match.Line line) {
        return line.verdict() == Match.Verdict.NOT_READ
                ? Words.of("gate.fittedNotRead")
                : Words.of("gate.fittedLine", line.specified(), line.fitted());
    }

    public String status(ItemState item) {
        return Words.of("station.status." + item.status().name());
    }

    /** The first characters of the fingerprint, in fours: short enough to read aloud. */
    public String seal() {
        return gate().fingerprint().substring(0, 4) + " " + gate().fingerprint().substring(4, 8);
    }

    public boolean survey() {
        return rules.order().phase() == wainbook.order.WorkOrder.Phase.DONOR_RECEIVED;
    }

    public List<Line> lines(ItemState item) {
        return item.entries().stream()
                .filter(entry -> !(entry.saying() instanceof TakenFromPaper))
                .map(entry -> line(entry, item))
                .toList();
    }

    /** What the item came to, to be read without opening it: its last result, whatever else was kept after that. */
    public Optional<Line> last(ItemState item) {
        return item.entries().stream()
                .filter(entry -> entry.saying() instanceof StationSaying.Result)
                .reduce((former, latter) -> latter)
                .map(entry -> line(entry, item));
    }

    private static Line line(Entry entry, ItemState item) {
        return new Line(
                entry.number(),
                entry.moment().at(),
                entry.moment().who(),
                SayingInWords.of(entry.saying()),
                item.paper(entry),
                ItemLine.file(entry.saying()),
                ItemLine.picture(entry.saying()));
    }

    /** Who did the work, with the number of entries. */
    public Map<String, Integer> workers() {
        Map<String, Integer> workers = new LinkedHashMap<>();
        gate().record()
                .items()
                .forEach(item -> item.entries().stream()
                        .filter(entry -> !(entry.saying() instanceof TakenFromPaper))
                        .map(entry -> item.paper(entry)
                                .map(TakenFromPaper::doer)
                                .orElse(entry.moment().who()))
                        .forEach(who -> workers.merge(who, 1, Integer::sum)));
        return workers;
    }
}
