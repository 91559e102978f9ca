package wainbook.order.specification.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.engineering.weights.axle.PassengerClass;
import wainbook.order.duty.Duty;
import wainbook.order.duty.Way;
import wainbook.page.Filled;

/** A duty as a form writes and reads it. */
final class DutyForm {

    static final int LEGS = 6;

    static final List<String> LEG_FIELDS = List.of("km", "meanKmh", "stopsPerKm", "upM", "downM", "loadPercent");

    private DutyForm() {}

    /** What a form holds before anybody stated a duty: usual figures for a bus or a goods vehicle. */
    static Filled fresh(Filled filled, boolean bus) {
        Map<String, String> usual = Map.ofEntries(
                Map.entry("payloadKg", bus ? "0" : ""),
                Map.entry("auxiliaryKw", bus ? "8" : "4"),
                Map.entry("bodyKwh", "0"),
                Map.entry("room", (bus ? Duty.Room.SALOON : Duty.Room.CAB).name()),
                Map.entry("heater", (bus ? Duty.Heater.HEAT_PUMP : Duty.Heater.RESISTOR).name()),
                Map.entry("outsideC", "-5"),
                Map.entry("heatedHours", "8"),
                Map.entry("packsInTheCold", Duty.PacksInTheCold.AS_THE_AIR.name()),
                Map.entry("drivingPercent", "20"),
                Map.entry("bodyPercent", "10"),
                Map.entry("oddsPercent", "95"),
                Map.entry("startOnPercent", "12"),
                Map.entry("nightHours", "9"),
                Map.entry("nightKw", "43"));
        return all(filled, usual);
    }

    static Filled of(Filled filled, Duty duty) {
        Filled form = filled.with("words", duty.words())
                .with("payloadKg", plain(duty.payloadKg()))
                .with("auxiliaryKw", plain(duty.auxiliaryKw()))
                .with("bodyKwh", plain(duty.bodyKwh()))
                .with("room", duty.heating().room().name())
                .with("heater", duty.heating().heater().name())
                .with("outsideC", plain(duty.heating().outsideC()))
                .with("heatedHours", plain(duty.heating().hours()))
                .with("drivingPercent", plain(duty.worst().drivingPercent()))
                .with("bodyPercent", plain(duty.worst().bodyPercent()))
                .with("oddsPercent", plain(duty.worst().oddsPercent()))
                .with("startOnPercent", plain(duty.startOnPercent()))
                .with("nightHours", plain(duty.charging().hours()))
                .with("nightKw", plain(duty.charging().kw()));
        for (int i = 0; i < duty.legs().size(); i++) {
            Duty.Leg leg = duty.legs().get(i);
            String at = "leg" + (i + 1);
            form = form.with(at + "way", leg.way().name())
                    .with(at + "km", plain(leg.km()))
                    .with(at + "meanKmh", plain(leg.meanKmh()))
                    .with(at + "stopsPerKm", plain(leg.stopsPerKm()))
                    .with(at + "upM", plain(leg.upM()))
                    .with(at + "downM", plain(leg.downM()))
                    .with(at + "loadPercent", plain(leg.loadPercent()));
        }
        if (duty.people().isPresent()) {
            Duty.People people = duty.people().get();
            form = form.with("passengerClass", people.passengerClass().name())
                    .with("seated", "" + people.seated())
                    .with("standing", "" + people.standing());
        }
        if (duty.packsInTheCold().isPresent()) {
            form = form.with("packsInTheCold", duty.packsInTheCold().get().name());
        }
        if (duty.use().isPresent()) {
            Duty.Use use = duty.use().get();
            form = form.with("daysPerYear", plain(use.daysPerYear()))
                    .with("years", use.years().map(String::valueOf).orElse(""));
        }
        if (duty.hydraulics().isPresent()) {
            Duty.Hydraulics work = duty.hydraulics().get();
            form = form.with("cycles", "" + work.cycles())
                    .with("bar", plain(work.bar()))
                    .with("litres", plain(work.litres()))
                    .with("idleMinutes", "" + work.idleMinutes());
        }
        return form;
    }

    /** @param recorded stays as it is: it has a form of its own */
    static Duty read(Figures sent, Optional<Duty.RecordedWay> recorded) {
        return new Duty(
                sent.text("words"),
                legs(sent),
                recorded,
                sent.blank("payloadKg") && !sent.blank("seated") ? BigDecimal.ZERO : sent.figure("payloadKg"),
                people(sent),
                sent.figure("auxiliaryKw"),
                sent.figure("bodyKwh"),
                hydraulics(sent),
                new Duty.Heating(
                        sent.choice("room", Duty.Room.values()),
                        sent.choice("heater", Duty.Heater.values()),
                        sent.figure("outsideC"),
                        sent.figure("heatedHours")),
                new Duty.Worst(sent.figure("drivingPercent"), sent.figure("bodyPercent"), sent.figure("oddsPercent")),
                sent.figure("startOnPercent"),
                new Duty.Charging(sent.figure("nightHours"), sent.figure("nightKw")),
                Optional.of(sent.choice("packsInTheCold", Duty.PacksInTheCold.values())),
                use(sent));
    }

    private static Optional<Duty.Use> use(Figures sent) {
        return sent.blank("daysPerYear") && sent.blank("years")
                ? Optional.empty()
                : Optional.of(new Duty.Use(
                        sent.figure("daysPerYear"),
                        sent.blank("years") ? Optional.empty() : Optional.of(sent.whole("years"))));
    }

    private static List<Duty.Leg> legs(Figures sent) {
        var legs = new ArrayList<Duty.Leg>();
        for (int i = 1; i <= LEGS; i++) {
            String at = "leg" + i;
            boolean empty = LEG_FIELDS.stream().allMatch(field -> sent.blank(at + field));
            if (!empty) {
                legs.add(new Duty.Leg(
                        sent.choice(at + "way", Way.values()),
                        sent.figure(at + "km"),
                        sent.figure(at + "meanKmh"),
                        sent.perhaps(at + "stopsPerKm").orElse(BigDecimal.ZERO),
                        sent.perhaps(at + "upM").orElse(BigDecimal.ZERO),
                        sent.perhaps(at + "downM").orElse(BigDecimal.ZERO),
                        sent.figure(at + "loadPercent")));
            }
        }
        return legs;
    }

    private static Optional<Duty.People> people(Figures sent) {
        return sent.blank("seated") && sent.blank("standing")
                ? Optional.empty()
                : Optional.of(new Duty.People(
                        sent.choice("passengerClass", PassengerClass.values()),
                        sent.blank("seated") ? 0 : sent.whole("seated"),
                        sent.blank("standing") ? 0 : sent.whole("standing")));
    }

    private static Optional<Duty.Hydraulics> hydraulics(Figures sent) {
        boolean none = IntStream.range(0, 4)
                .mapToObj(List.of("cycles", "bar", "litres", "idleMinutes")::get)
                .allMatch(sent::blank);
        return none
                ? Optional.empty()
                : Optional.of(new Duty.Hydraulics(
                        sent.whole("cycles"),
                        sent.figure("bar"),
                        sent.figure("litres"),
                        sent.blank("idleMinutes") ? 0 : sent.whole("idleMinutes")));
    }

    static Filled all(Filled filled, Map<String, String> values) {
        Filled form = filled;
        for (Map.Entry<String, String> one : values.entrySet()) {
            form = form.with(one.getKey(), one.getValue());
        }
        return form;
    }

    static String plain(BigDecimal value) {
        return value.toPlainString();
    }
}
