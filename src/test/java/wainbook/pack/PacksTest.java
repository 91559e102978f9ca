package wainbook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OwnSheet;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Rebuild;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.PackSaying.Verdict;
import wainbook.pack.PackSaying.Way;
import wainbook.pack.act.Judging;
import wainbook.pack.act.Keeping;
import wainbook.pack.act.OwnInsulation;
import wainbook.pack.act.Quarantining;
import wainbook.pack.act.Receiving;
import wainbook.pack.act.SendingOff;
import wainbook.pack.act.StorageChecking;
import wainbook.pack.act.Watching;
import wainbook.process.sheet.Ask;

/** A pack from receipt to fitting, and what keeps it from being fitted. */
@QuarkusTest
@Tag("database")
class PacksTest {

    @Inject
    Receiving receiving;

    @Inject
    StorageChecking checking;

    @Inject
    Quarantining quarantining;

    @Inject
    Watching watching;

    @Inject
    Judging judging;

    @Inject
    SendingOff sending;

    @Inject
    Keeping keeping;

    @Inject
    Fitting fitting;

    @Inject
    Ledger ledger;

    @Inject
    Rebuild rebuild;

    @Inject
    Clock clock;

    private Instant now;
    private String lot;

    @BeforeEach
    void people_who_may() {
        Cast.assemble();
        Cast.AUTHORISED.give("HV", 2);
        Cast.SECOND_AUTHORISED.give("HV", 3);
        now = clock.instant();
        lot = "L" + UUID.randomUUID().toString().substring(0, 8);
    }

    @Test
    void a_sound_pack_is_received_by_a_competent_person_and_may_be_fitted() {
        String serial = serial();
        assertThat(keys(receive(serial, Cast.TECHNICIAN, List.of(), true))).contains("works.competenceMissing");
        assertThat(receive(serial, Cast.AUTHORISED, List.of(), true).reasons()).isEmpty();
        assertThat(pack(serial).received().orElseThrow().verdict()).isEqualTo(Verdict.ACCEPTED);
        assertThat(against(serial, now)).isEmpty();
        assertThat(keys(receive(serial, Cast.AUTHORISED, List.of(), true))).containsExactly("pack.receivedAlready");
        assertThat(Browsing.as(Cast.AUDITOR).page("/packs/" + serial)).contains("in storage", lot, "above the limit");
    }

    @Test
    void a_pack_without_its_certificate_waits_until_it_is_received_with_it() {
        String serial = serial();
        receive(serial, Cast.AUTHORISED, List.of(), false);
        assertThat(against(serial, now)).containsExactly("pack.notAccepted");
        assertThat(receive(serial, Cast.AUTHORISED, List.of(), true).reasons()).isEmpty();
        assertThat(against(serial, now)).isEmpty();
    }

    @Test
    void a_pack_that_came_in_dented_is_in_quarantine_at_once_and_holds_its_lot() {
        String dented = serial();
        String sister = serial();
        receive(sister, Cast.AUTHORISED, List.of(), true);
        receive(dented, Cast.AUTHORISED, List.of(Looked.NO_DENTS), true);
        assertThat(pack(dented).quarantine().orElseThrow().said().trigger()).isEqualTo(Trigger.DENTED);
        assertThat(against(dented, now)).containsExactly("pack.inQuarantine");
        assertThat(against(sister, now)).containsExactly("pack.lotHeld");
        judge(dented, Judgement.DEFECTIVE_LOT, now);
        assertThat(against(sister, now)).containsExactly("pack.lotHeld");
        judge(dented, Judgement.DEFECTIVE, now);
        assertThat(against(sister, now)).isEmpty();
        assertThat(against(dented, now)).containsExactly("pack.defective");
    }

    @Test
    void a_check_in_storage_is_owed_three_months_after_the_last_look() {
        String serial = serial();
        receive(serial, Cast.AUTHORISED, List.of(), true);
        LocalDate due = pack(serial).checkDue(java.time.ZoneOffset.UTC).orElseThrow();
        assertThat(due)
                .isEqualTo(LocalDate.ofInstant(now, java.time.ZoneOffset.UTC).plusMonths(3));
        Instant later = now.plus(Duration.ofDays(95));
        assertThat(against(serial, later)).containsExactly("pack.checkOverdue");
        assertThat(keys(check(serial, Cast.TECHNICIAN, later))).containsExactly("works.competenceMissing");
        assertThat(check(serial, Cast.AUTHORISED, later).reasons()).isEmpty();
        assertThat(against(serial, later)).isEmpty();
    }

    @Test
    void anybody_sets_any_pack_aside_and_saying_nothing_of_it_is_enough() {
        String unknown = serial();
        Browsing outsider = Browsing.as(Cast.OUTSIDER);
        Map<String, Object> form = outsider.form("/packs/damaged");
        form.put("serial", unknown);
        assertThat(outsider.send("/packs/damaged", form).statusCode()).isEqualTo(303);
        assertThat(outsider.send("/packs/damaged", form).statusCode()).isEqualTo(303);
        assertThat(ledger.history(Serials.subject(unknown)).entries()).hasSize(1);
        assertThat(pack(unknown).quarantine().orElseThrow().said().trigger()).isEqualTo(Trigger.OTHER);
        assertThat(outsider.page("/packs/" + unknown)).contains("in quarantine", "Never received here", "Next reading");
        assertThat(outsider.page("/matters?sort=PACK")).contains("Pack " + unknown);
    }

    @Test
    void a_warm_reading_calls_the_fire_service_and_begins_the_watch_anew() {
        String serial = serial();
        receive(serial, Cast.AUTHORISED, List.of(), true);
        assertThat(keys(watch(serial, "20", 0))).containsExactly("pack.notInQuarantine");
        quarantine(serial);
        watch(serial, "20", 0);
        watch(serial, "22.5", 15);
        assertThat(pack(serial).quarantine().orElseThrow().alarm()).isPresent();
        assertThat(pack(serial).quarantine().orElseThrow().times().next())
                .contains(now.plus(Duration.ofMinutes(30)).truncatedTo(java.time.temporal.ChronoUnit.MICROS));
        assertThat(Browsing.as(Cast.OUTSIDER).page("/packs/" + serial))
                .contains("Call the fire service and follow the emergency plan", "rise over 2 K");
        assertThat(Browsing.as(Cast.OUTSIDER).page("/packs/" + serial + "/transport"))
                .contains("This is no shipping document", "P911", "liable to react dangerously");
    }

    @Test
    void a_fitted_pack_in_quarantine_holds_its_vehicle_until_it_is_judged_sound_after_a_whole_watch() {
        String serial = serial();
        receive(serial, Cast.AUTHORISED, List.of(), true);
        var sheet = OwnSheet.released(
                OwnSheet.item("fit", "Fit the pack", new Ask.Serial("TRACTION-PACK", Optional.empty()), 5));
        Donor bus = Donor.received(sheet.route());
        bus.record(Cast.TECHNICIAN, "fit", Map.of("serial", serial)).then().statusCode(201);
        assertThat(Browsing.as(Cast.AUDITOR).page("/packs/damaged?serial=" + serial))
                .contains("This pack is on the record of vehicle " + bus.number());
        now = clock.instant();
        quarantine(serial);
        quarantine(serial);
        assertThat(held(bus, Stops.WORK)).as("two words, one hold").hasSize(1);
        assertThat(held(bus, Stops.MOVE))
                .as("it must be free to leave the hall")
                .isEmpty();

        now = clock.instant();
        assertThat(judge(serial, Judgement.SOUND, now)).containsExactly("pack.watchNotOver");
        assertThat(keys(judging.judge(
                        new Judging.ToJudge(UUID.randomUUID(), serial, Judgement.DEFECTIVE, "looked at"),
                        Cast.AUTHORISED.at(now))))
                .containsExactly("pack.levelTooLow");
        assertThat(keys(sending.send(
                        new SendingOff.ToSend(UUID.randomUUID(), serial, "maker", Optional.empty()),
                        Cast.TECHNICIAN.at(now))))
                .containsExactly("pack.judgeFirst", "pack.stillFitted");
        for (int minute : List.of(0, 15, 30)) {
            watch(serial, "18", minute);
        }
        for (int hour = 1; hour <= 24; hour++) {
            watch(serial, "18", hour * 60);
        }
        assertThat(judge(serial, Judgement.SOUND, now.plus(Duration.ofHours(25))))
                .isEmpty();
        assertThat(held(bus, Stops.WORK)).isEmpty();
    }

    @Test
    void a_pack_in_quarantine_is_read_as_fitted_nowhere_and_the_answer_says_what_lifts_it() {
        String serial = serial();
        receive(serial, Cast.AUTHORISED, List.of(), true);
        quarantine(serial);
        var sheet = OwnSheet.released(
                OwnSheet.item("fit", "Fit the pack", new Ask.Serial("TRACTION-PACK", Optional.empty()), 5));
        var refused = Donor.received(sheet.route()).record(Cast.TECHNICIAN, "fit", Map.of("serial", serial));
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.jsonPath().getList("reasons.key")).containsExactly("pack.inQuarantine");
        assertThat(refused.jsonPath().getString("reasons[0].lift")).isEqualTo("/packs/" + serial);
    }

    @Test
    void a_part_that_the_works_keeps_is_fitted_only_from_its_own_store() {
        String part = "KEPT-" + lot;
        var sheet = OwnSheet.released(OwnSheet.item("fit", "Fit the pack", new Ask.Serial(part, Optional.empty()), 5));
        String before = serial();
        Donor.received(sheet.route())
                .record(Cast.TECHNICIAN, "fit", Map.of("serial", before))
                .then()
                .statusCode(201);
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/packs");
        form.put("part", part);
        form.put("kept", "yes");
        assertThat(engineer.send("/packs/parts", form).statusCode()).isEqualTo(303);
        assertThat(engineer.page("/packs")).contains(part);
        String stranger = serial();
        Donor bus = Donor.received(sheet.route());
        var refused = bus.record(Cast.TECHNICIAN, "fit", Map.of("serial", stranger));
        assertThat(refused.jsonPath().getList("reasons.key")).containsExactly("pack.notReceived");
        receive(stranger, Cast.AUTHORISED, List.of(), true);
        bus.record(Cast.TECHNICIAN, "fit", Map.of("serial", stranger)).then().statusCode(201);
        assertThat(Browsing.as(Cast.AUDITOR).page("/packs/" + stranger)).contains("fitted", bus.number());
        keeping.keep(new Keeping.ToKeep(UUID.randomUUID(), part, false), Cast.WORKS_ENGINEER.at(now));
    }

    @Test
    void the_tables_are_made_again_as_they_were() {
        String stored = serial();
        String damaged = serial();
        receive(stored, Cast.AUTHORISED, List.of(), true);
        receive(damaged, Cast.AUTHORISED, List.of(Looked.TILT), true);
        watch(damaged, "18", 0);
        List<String> before = rows();
        assertThat(before).anyMatch(row -> row.contains(stored)).anyMatch(row -> row.contains(damaged));
        rebuild.everything();
        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void the_form_gives_back_what_was_typed_with_every_fault_at_its_field() {
        String serial = serial();
        Browsing tester = Browsing.as(Cast.AUTHORISED);
        Map<String, Object> form = tester.form("/packs/new");
        form.put("serial", serial);
        form.put("lot", lot);
        form.put("voltageV", "much");
        var answer = tester.send("/packs/new", form);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString()).contains(serial, lot, "much", "Write a number", "Write a day", "Choose one");
        assertThat(ledger.history(Serials.subject(serial)).isEmpty()).isTrue();
    }

    private static String serial() {
        return "PT" + UUID.randomUUID().toString().substring(0, 8);
    }

    private Outcome<Entry> receive(String serial, Cast person, List<Looked> unsound, boolean papers) {
        return receiving.receive(
                new Receiving.ToReceive(
                        UUID.randomUUID(),
                        serial,
                        "Pack 70 kWh",
                        lot,
                        LocalDate.of(2026, 1, 20),
                        new BigDecimal("41"),
                        new BigDecimal("655"),
                        Arrays.stream(Looked.values())
                                .map(look -> new Seen(look, !unsound.contains(look)))
                                .toList(),
                        new OwnInsulation(
                                Way.TERMINALS_JOINED,
                                new BigDecimal("200000000"),
                                false,
                                new BigDecimal("1000"),
                                new BigDecimal("756"),
                                "IT-01"),
                        Optional.of("TS-70"),
                        Optional.of("C-1").filter(paper -> papers),
                        "Store, shelf 1",
                        Optional.empty()),
                person.at(now));
    }

    private Outcome<Entry> check(String serial, Cast person, Instant at) {
        return checking.check(
                new StorageChecking.ToCheck(
                        UUID.randomUUID(),
                        serial,
                        new BigDecimal("40"),
                        new BigDecimal("20"),
                        true,
                        "Store, shelf 1",
                        Optional.empty()),
                person.at(at));
    }

    private void quarantine(String serial) {
        Outcome<Entry> outcome = quarantining.quarantine(
                new Quarantining.ToQuarantine(
                        UUID.randomUUID(),
                        serial,
                        Trigger.DROPPED,
                        false,
                        Optional.of("Bay Q1"),
                        Optional.empty(),
                        Optional.empty()),
                outsider());
        assertThat(outcome.reasons()).isEmpty();
    }

    private Actor outsider() {
        return Cast.OUTSIDER.at(now);
    }

    private Outcome<Entry> watch(String serial, String packC, int minutes) {
        return watching.watch(
                new Watching.ToWatch(
                        UUID.randomUUID(), serial, new BigDecimal(packC), new BigDecimal("15"), Optional.empty()),
                Cast.OUTSIDER.at(now.plus(Duration.ofMinutes(minutes))));
    }

    private List<String> judge(String serial, Judgement judgement, Instant at) {
        return keys(judging.judge(
                new Judging.ToJudge(UUID.randomUUID(), serial, judgement, "cells and case measured"),
                Cast.SECOND_AUTHORISED.at(at)));
    }

    private List<String> against(String serial, Instant at) {
        return QuarkusTransaction.requiringNew()
                .call(() -> fitting.against("TRACTION-PACK", serial, false, at).stream()
                        .map(Reason::key)
                        .toList());
    }

    private Pack pack(String serial) {
        return Pack.of(ledger.history(Serials.subject(serial))).orElseThrow();
    }

    private List<wainbook.order.OrderSaying.Held> held(Donor bus, Stops what) {
        return WorkOrder.of(ledger.history(Subject.workOrder(bus.number())))
                .orElseThrow()
                .holdsThatStop(what);
    }

    private static List<String> keys(Outcome<?> outcome) {
        return outcome.reasons().stream().map(Reason::key).toList();
    }

    private static List<String> rows() {
        return QuarkusTransaction.requiringNew()
                .call(() -> PackRow.all().stream()
                        .map(row -> String.join(
                                " ",
                                row.serial,
                                row.lot,
                                row.place,
                                String.valueOf(row.lookedAt),
                                String.valueOf(row.nextWatch),
                                String.valueOf(row.since),
                                "" + row.accepted + row.quarantined + row.setAside + row.holdsLot + row.gone))
                        .toList());
    }
}
