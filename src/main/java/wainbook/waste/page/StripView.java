package wainbook.waste.page;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.engineering.Answer;
import wainbook.engineering.weights.RecoveryRate;
import wainbook.ledger.Entry;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.Container;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.EngineMadeUnusable;
import wainbook.waste.act.EngineFate;
import wainbook.waste.rate.Rates;
import wainbook.waste.rate.Recovery;

/**
 * What was taken out of a vehicle, as its page shows it.
 *
 * @param containers those that hold any of it
 * @param room open containers by code, for what is not placed yet
 * @param may whether this reader acts here
 */
public record StripView(
        WorkOrder order,
        List<Thing> things,
        Map<String, Container> containers,
        Map<String, List<ContainerLine>> room,
        Optional<Entry> engineBy,
        LocalDate today,
        Filled filled,
        boolean may) {

    /** A recovery rate with its method named. */
    public record Rate(String method, String text, Recovery recovery, Optional<RecoveryRate.Results> results) {

        public String recycling() {
            return results.map(found -> percent(found.recyclingPercent())).orElse("–");
        }

        public String recovered() {
            return results.map(found -> percent(found.recoveryPercent())).orElse("–");
        }

        private static String percent(double value) {
            return String.format(Words.LOCALE, "%.2f", value);
        }
    }

    public String number() {
        return order.number();
    }

    public String path() {
        return "/orders/" + number() + "/strip";
    }

    public String orderPath() {
        return "/orders/" + number();
    }

    /** Whether something was noted by hand and came back. */
    public boolean typed() {
        return !filled.form().faults().isEmpty();
    }

    public String day(LocalDate date) {
        return Formats.date(date);
    }

    public boolean donorWaits() {
        return order.phase() == Phase.DONOR_RECEIVED;
    }

    public List<ThingLine> all() {
        return things.stream()
                .map(thing -> new ThingLine(
                        number(),
                        thing,
                        thing.container().flatMap(label -> Optional.ofNullable(containers.get(label))),
                        today))
                .toList();
    }

    /** Handed over, and nothing of it was ever placed: from a time when the works kept no containers here. */
    public boolean beforeContainers() {
        return order.phase() == Phase.HANDED_OVER
                && things.stream().allMatch(thing -> thing.said().placed().isEmpty());
    }

    public List<ThingLine> unplaced() {
        if (beforeContainers()) {
            return List.of();
        }
        return all().stream()
                .filter(line -> line.thing().standing() == Thing.Standing.UNPLACED)
                .toList();
    }

    /** Where it can go now, the container begun first before others. */
    public List<ContainerLine> roomFor(ThingLine line) {
        return room.getOrDefault(line.thing().row().code(), List.of());
    }

    /** So that a button touched twice writes once. */
    public UUID idOf(ThingLine line, String label) {
        return UUID.nameUUIDFromBytes((filled.id() + line.thing().key() + label).getBytes(StandardCharsets.UTF_8));
    }

    public String title() {
        int left = unplaced().size();
        if (beforeContainers()) {
            return Words.of("waste.stripTitleBefore", number());
        }
        return left == 0 ? Words.of("waste.stripTitleDone", number()) : Words.of("waste.stripTitle", number(), left);
    }

    public String mass() {
        return ContainerLine.plain(new Rates(things, containers).byIso().massKg());
    }

    public List<Rate> rates() {
        if (things.isEmpty()) {
            return List.of();
        }
        var rates = new Rates(things, containers);
        return List.of(rate("iso", rates.byIso()), rate("notes", rates.byNotes()));
    }

    private static Rate rate(String key, Recovery recovery) {
        Answer<RecoveryRate.Results> answer = recovery.worked();
        Optional<RecoveryRate.Results> results = answer.fold(
                working -> Optional.of(working.results()), faults -> Optional.empty(), refusal -> Optional.empty());
        return new Rate(Words.of("waste.rate." + key), Words.of("waste.rateText." + key), recovery, results);
    }

    public String unknown() {
        return ContainerLine.plain(new Rates(things, containers).unknownKg());
    }

    public boolean engineDestroyed() {
        return EngineFate.DESTROYED.equals(order.facts().get(EngineFate.FACT));
    }

    public Optional<String> engineFate() {
        return Optional.ofNullable(order.facts().get(EngineFate.FACT));
    }

    public Optional<EngineMadeUnusable> engine() {
        return engineBy.map(entry -> (EngineMadeUnusable) entry.saying());
    }

    /** Whether somebody claims a saving by an engine that runs on elsewhere. */
    public boolean claimAgainstRunningEngine() {
        return "true".equals(order.facts().get("emission_claim"))
                && !engineDestroyed()
                && engineFate().filter(text -> !text.isEmpty()).isPresent();
    }

    public List<Option> fates() {
        return fateOptions();
    }

    static List<Option> fateOptions() {
        return Arrays.stream(Fate.values())
                .map(fate -> new Option(fate.name(), Words.of("process.fate." + fate.name())))
                .toList();
    }

    public List<Option> codes() {
        return codeOptions();
    }

    static List<Option> codeOptions() {
        return ListOfWaste.ours().entries().stream()
                .map(row -> new Option(row.code(), row.code() + " " + row.title()))
                .toList();
    }
}
