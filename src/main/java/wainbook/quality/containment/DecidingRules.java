package wainbook.quality.containment;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.quality.QualitySaying.Disposition;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Recheck;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.QualitySaying.Word;
import wainbook.quality.containment.Deciding.ToDecide;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRule;

/**
 * All that stands against a decision on readings. Evaluated all, shown all.
 *
 * @param shown the entry that the decision names
 * @param instrument what was measured with, as the register has it
 * @param instrumentInDoubt whether that is in doubt itself
 * @param personKnown whether the person named works here
 */
record DecidingRules(
        ToDecide asked,
        History vehicle,
        VehicleDoubt doubt,
        Optional<Entry> shown,
        Optional<Instrument> instrument,
        boolean instrumentInDoubt,
        boolean personKnown,
        String who,
        LocalDate today) {

    private static final String SOURCE = "ISO 9001:2015 7.1.5.2 (clause from memory)";

    static boolean isCode(String text) {
        return text.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
    }

    /** What was measured with: the entry's own instrument, else the one that was typed. */
    static Optional<String> instrument(ToDecide asked, Optional<Entry> shown) {
        return shown.map(Entry::saying)
                .filter(Result.class::isInstance)
                .flatMap(said -> ((Result) said).basis().used())
                .map(used -> used.instrument())
                .or(() -> asked.checkedBy().with());
    }

    List<Reason> against() {
        var against = new ArrayList<Reason>();
        List<Doubted> chosen = chosen();
        if (chosen.isEmpty() || chosen.size() < asked.places().size()) {
            against.add(Reason.of("quality.noReading", Reason.WORKS_RULE).liftedAt("#places"));
        }
        if (asked.reason().isBlank() || asked.reason().length() > 2000) {
            against.add(Reason.of("quality.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
        }
        if (doubt.about().sort() == Sort.COMPETENCE && doubt.about().code().equals(who)) {
            against.add(Reason.of("quality.ownCompetence", SOURCE, doubt.containment()));
        }
        against.addAll(ofDisposition(chosen));
        return against;
    }

    private List<Doubted> chosen() {
        return doubt.open().stream()
                .map(VehicleDoubt.Reading::said)
                .filter(reading -> asked.places().contains(reading.key()))
                .toList();
    }

    private List<Reason> ofDisposition(List<Doubted> chosen) {
        return switch (asked.disposition()) {
            case RE_CHECKED, RENEWED ->
                asked.checkedBy().entryNumber().isPresent() ? againstEntry(chosen) : againstTyped(chosen);
            case REPLACED -> List.of();
            case ACCEPTED ->
                chosen.stream()
                                .anyMatch(reading -> reading.verdict() == Sureness.SURE_OUT
                                        && reading.gravity().grave())
                        ? List.of(Reason.of("quality.notAccepted", SOURCE, doubt.containment()))
                        : List.of();
            case BY_OPERATOR -> byOperator();
        };
    }

    private List<Reason> byOperator() {
        boolean gone = WorkOrder.of(vehicle)
                .filter(order -> order.phase() == WorkOrder.Phase.HANDED_OVER)
                .isPresent();
        if (!gone) {
            return List.of(Reason.of("quality.notHandedOver", Reason.WORKS_RULE, asked.order()));
        }
        return doubt.noted(Word.ANSWERED)
                ? List.of()
                : List.of(Reason.of("quality.notAnswered", Reason.WORKS_RULE, asked.order())
                        .liftedAt(doubt.path(asked.order()) + "#operator"));
    }

    /** A passing entry for the same item, made after the doubt arose and not in doubt itself. */
    private List<Reason> againstEntry(List<Doubted> chosen) {
        long number = asked.checkedBy().entryNumber().orElseThrow();
        Optional<Result> result =
                shown.map(Entry::saying).filter(Result.class::isInstance).map(Result.class::cast);
        var against = new ArrayList<Reason>();
        boolean after = shown.filter(entry -> entry.number() > doubt.entry()).isPresent();
        if (result.filter(said -> said.verdict() == Verdict.PASS).isEmpty() || !after || voided()) {
            against.add(Reason.of("quality.entryPassesNothing", SOURCE, number).liftedAt("#entry"));
        } else if (chosen.stream().anyMatch(reading -> !answers(result.get(), reading))) {
            against.add(Reason.of("quality.entryOfOtherItem", SOURCE, number).liftedAt("#entry"));
        }
        if (instrumentInDoubt || VehicleDoubts.of(vehicle).about(number).isPresent()) {
            against.add(Reason.of("quality.entryInDoubt", SOURCE, number).liftedAt("#entry"));
        }
        return against;
    }

    private boolean voided() {
        return vehicle.saying(Voided.class)
                .anyMatch(entry -> shown.map(Entry::id).equals(Optional.of(((Voided) entry.saying()).entry())));
    }

    private static boolean answers(Result said, Doubted reading) {
        return said.about().line().equals(reading.item())
                || (said instanceof Tightened tightened && reading.joint().equals(Optional.of(tightened.joint())))
                || (said instanceof Rechecked rechecked && reading.joint().equals(Optional.of(rechecked.joint())));
    }

    private List<Reason> againstTyped(List<Doubted> chosen) {
        var against = new ArrayList<Reason>();
        boolean invalid = doubt.about().sort() == Sort.COMPETENCE
                && asked.checkedBy().person().equals(Optional.of(doubt.about().code()));
        if (!personKnown || invalid) {
            against.add(Reason.of("quality.personMissing", Reason.WORKS_RULE).liftedAt("#person"));
        }
        boolean figures = chosen.stream().anyMatch(reading -> reading.reading().isPresent());
        if (figures || asked.checkedBy().with().isPresent()) {
            against.addAll(ofInstrument(chosen));
        }
        if (figures) {
            against.addAll(ofFigures(chosen));
        }
        return against;
    }

    private List<Reason> ofInstrument(List<Doubted> chosen) {
        String code = asked.checkedBy().with().orElse("–");
        if (instrument.isEmpty()) {
            return List.of(Reason.of("quality.instrumentMissing", SOURCE, code).liftedAt("#with"));
        }
        Instrument known = instrument.get();
        var against = new ArrayList<Reason>();
        if (instrumentInDoubt) {
            against.add(Reason.of("quality.instrumentInDoubt", SOURCE, code).liftedAt("#with"));
        }
        if (chosen.stream()
                .anyMatch(reading ->
                        reading.reading().isPresent() && !reading.unit().equals(known.unit()))) {
            against.add(Reason.of("quality.instrumentUnit", SOURCE, code, known.unit())
                    .liftedAt("#with"));
        }
        InstrumentRule.against(instrument, known.kind(), read(), today).stream()
                .map(reason -> reason.liftedAt("#with"))
                .forEach(against::add);
        return against;
    }

    private List<BigDecimal> read() {
        return Stream.of(asked.checkedBy().least(), asked.checkedBy().most())
                .flatMap(Optional::stream)
                .toList();
    }

    /** The lowest and the highest of what was read keep to the limits of every reading that it settles. */
    private List<Reason> ofFigures(List<Doubted> chosen) {
        if (read().size() < 2 || read().get(0).compareTo(read().get(1)) > 0) {
            return List.of(
                    Reason.of("quality.figuresMissing", Reason.WORKS_RULE).liftedAt("#least"));
        }
        return chosen.stream()
                .filter(reading -> read().stream().anyMatch(figure -> outside(figure, reading)))
                .findFirst()
                .map(reading -> Reason.of(
                                "quality.figuresOutside",
                                SOURCE,
                                reading.number(),
                                reading.lower().map(BigDecimal::toPlainString).orElse("–"),
                                reading.upper().map(BigDecimal::toPlainString).orElse("–"),
                                reading.unit())
                        .liftedAt("#least"))
                .stream()
                .toList();
    }

    private static boolean outside(BigDecimal figure, Doubted reading) {
        int nearest = reading.strict() ? 1 : 0;
        return reading.lower()
                        .filter(limit -> figure.compareTo(limit) < nearest)
                        .isPresent()
                || reading.upper()
                        .filter(limit -> limit.compareTo(figure) < nearest)
                        .isPresent();
    }

    /** What the decision keeps of it. */
    Optional<Recheck> recheck() {
        boolean checked = asked.disposition() == Disposition.RE_CHECKED || asked.disposition() == Disposition.RENEWED;
        if (!checked) {
            return Optional.empty();
        }
        Optional<String> by = shown.map(entry -> entry.moment().who())
                .or(() -> asked.checkedBy().person());
        return Optional.of(new Recheck(
                shown.map(Entry::id),
                by.orElseThrow(),
                instrument.map(Instrument::code),
                instrument.flatMap(Instrument::due),
                asked.checkedBy().least(),
                asked.checkedBy().most()));
    }
}
