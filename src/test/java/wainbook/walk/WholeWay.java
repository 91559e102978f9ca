package wainbook.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.walk.ApiHands.PASSWORD;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;

/**
 * A worn diesel bus from order to handed-over electric bus, stopped wherever a careful works would stop it. Told once; played
 * by pages and by the API.
 */
final class WholeWay {

    private static final List<String> FIRST_SOURCES = List.of("INLET-DC", "LV-24V", "WHEELS", "CAPACITORS");
    private static final List<String> BARE = List.of("TP-INLET", "TP-BUS", "TP-INV", "TP-MOTOR");
    private static final List<String> ONE_PACK = List.of("TP-INLET", "TP-BUS", "TP-INV", "TP-MOTOR", "TP-PACK1");
    private static final List<String> TWO_PACKS =
            List.of("TP-INLET", "TP-BUS", "TP-INV", "TP-MOTOR", "TP-PACK1", "TP-PACK2");

    private static final List<String> AFTER_OPENING =
            List.of("TOOLS", "COVERS", "JOINTS", "BONDING", "INSULATION", "POLARITY", "LOOP", "COOLANT");
    private static final List<String> RESTORING = List.of("PEOPLE_WARNED", "AREA_BARRIERED", "TOOLS_COUNTED");

    /** What decides which documents this bus needs in Great Britain; {@code pack_types} only counts them. */
    private static final Map<String, String> FACTS = Map.ofEntries(
            Map.entry("category", "M3"),
            Map.entry("axles", "2"),
            Map.entry("propulsion_changed", "true"),
            Map.entry("chassis_cut_or_drilled", "false"),
            Map.entry("axle_plates_changed", "false"),
            Map.entry("gross_plated_old", "18000"),
            Map.entry("gross_plated_new", "18000"),
            Map.entry("tacho_fitted", "false"),
            Map.entry("limiter_required", "false"),
            Map.entry("tail_lift", "false"),
            Map.entry("crane_or_hook_loader", "false"),
            Map.entry("pack_types", "E60"),
            Map.entry("charge_ac", "false"),
            Map.entry("charge_dc", "true"),
            Map.entry("waste_streams", "16 06 01*"),
            Map.entry("emission_claim", "false"));

    private static final List<String> DOCUMENTS =
            List.of("GB-01", "GB-03", "GB-10", "GB-11", "GB-15", "GB-27", "GB-28", "GB-29", "GB-30", "GB-34", "GB-36");

    private final Vehicle vehicle;
    private final Hands hands;
    private final Hands other;
    private final WalkClock clock;
    private final Isolating isolation;

    /** @param other hands at a second vehicle, which stands in the way once */
    WholeWay(Vehicle vehicle, Hands hands, Hands other, WalkClock clock) {
        this.vehicle = vehicle;
        this.hands = hands;
        this.other = other;
        this.clock = clock;
        this.isolation = new Isolating(hands, clock);
    }

    void walk() {
        ordered();
        surveyed();
        acceptedAtItsGate();
        ontoTheLine();
        stripped();
        fittedUnderIsolation();
        leavesUnrestoredWhileWorkIsOwed();
        commissioned();
        worksLive();
        leavesTheLine();
        handedOver();
    }

    private void ordered() {
        done(hands.order("ingrid", Map.of("packs", "2")));
        done(hands.donor("amara", vehicle.vin(), "VF12 ABC", 612_000));
    }

    private void surveyed() {
        survey(hands, vehicle.vin());
    }

    static void survey(Hands at, String vin) {
        done(at.entry("amara", "vin", Map.of("serial", vin)));
        done(at.entry("amara", "engine-number", Map.of("serial", "E-" + vin.substring(8))));
        done(at.entry("amara", "frame", Map.of("choice", "Sound")));
        done(at.entry("amara", "tyres", Map.of("cells", List.of("6", "6", "7", "7", "8", "8", "8", "8"))));
        done(at.entry("amara", "received-front", "WP-01", Map.of("reading", "4100")));
    }

    private void acceptedAtItsGate() {
        refused(hands.sign("mateo", "intake", PASSWORD), "gate.itemOpen");
        done(hands.entry("hana", "hazards", Map.of("words", "none")));
        refused(hands.sign("hana", "intake", PASSWORD), "gate.ownWork");
        refused(hands.sign("owen", "intake", PASSWORD), "works.competenceExpired");
        refused(hands.sign("mateo", "intake", "not the password"), "works.passwordWrong");
        done(hands.refuse("mateo", "intake", List.of("frame"), "look behind the fuel tank too"));
        refused(hands.sign("mateo", "intake", PASSWORD), "gate.itemRefused");
        done(hands.voidLast("amara", "frame", "looked at again"));
        done(hands.entry("amara", "frame", Map.of("choice", "Surface rust, to be treated")));
        done(hands.sign("mateo", "intake", PASSWORD));
    }

    private void ontoTheLine() {
        secondBusTakesTheStation();
        refused(hands.move("fatima", "ONTO_LINE", "ST-1"), "line.occupied");
        done(other.move("fatima", "OFF_LINE", "BAY-1"));
        done(hands.move("fatima", "ONTO_LINE", "ST-1"));
        refused(hands.move("fatima", "FORWARD", "ST-2"), "line.gateUnsigned");
    }

    private void secondBusTakesTheStation() {
        done(other.order("ingrid", Map.of()));
        done(other.donor("amara", "WBKZZZ9876543210" + vehicle.vin().charAt(16), "VF13 DEF", 580_000));
        refused(
                other.entry(
                        "amara",
                        "engine-number",
                        Map.of("serial", "E-" + vehicle.vin().substring(8))),
                "station.serialElsewhere");
        survey(other, "WBKZZZ9876543210" + vehicle.vin().charAt(16));
        done(other.entry("amara", "hazards", Map.of("words", "none")));
        done(other.sign("mateo", "intake", PASSWORD));
        done(other.move("fatima", "ONTO_LINE", "ST-1"));
    }

    private void stripped() {
        refused(hands.entry("yusuf", "refrigerant", Map.of("quantity", "2.1")), "station.factsMissing");
        done(hands.fact("ingrid", "air_conditioning", "true"));
        done(hands.fact("ingrid", "engine_fate", "sold"));
        refused(hands.entry("yusuf", "refrigerant", Map.of("quantity", "2.1")), "works.competenceMissing");
        done(hands.entry("amara", "refrigerant", Map.of("quantity", "2.1")));
        refused(hands.entry("amara", "drain-fuel", Map.of("quantity", "60")), "station.notInOrder");
        done(hands.hold("amara", "QUALITY", List.of("WORK"), "crack suspected"));
        refused(hands.entry("amara", "starter-batteries", Map.of("quantity", "110")), "station.held");
        refused(hands.release("ingrid", 1, "go on"), "order.mayNotRelease");
        done(hands.release("kofi", 1, "looked at, no crack"));
        done(hands.entry("amara", "starter-batteries", Map.of("quantity", "110")));
        done(hands.entry("amara", "drain-fuel", Map.of("quantity", "60")));
        done(hands.entry("amara", "drain-coolant", Map.of("quantity", "38")));
        done(hands.entry("linh", "engine-out", Map.of()));
        refused(
                hands.signAfter("mateo", "strip", () -> {
                    done(hands.voidLast("amara", "drain-fuel", "the meter was read wrong"));
                    done(hands.entry("amara", "drain-fuel", Map.of("quantity", "60")));
                }),
                "gate.changedSinceSeen");
        done(hands.sign("mateo", "strip", PASSWORD));
        changedSinceSigned();
        done(hands.move("fatima", "FORWARD", "ST-2"));
    }

    private void changedSinceSigned() {
        done(hands.voidLast("amara", "drain-coolant", "litres and gallons mixed up"));
        done(hands.entry("amara", "drain-coolant", Map.of("quantity", "38")));
        refused(hands.move("fatima", "FORWARD", "ST-2"), "line.gateChanged");
        done(hands.sign("mateo", "strip", PASSWORD));
    }

    private void fittedUnderIsolation() {
        motorFitted();
        coolingFitted();
        refused(hands.entry("linh", "pack1-serial", Map.of("serial", "12")), "station.serialForm");
        done(hands.entry("linh", "pack1-serial", Map.of("serial", packSerial(1))));
        done(hands.entry("linh", "pack2-serial", Map.of("serial", packSerial(2))));
        refused(hands.entry("linh", "pack2-bond", "TW-105", torque("20", 2)), "isolation.notInForce");
        isolatedBare();
        landedOnAClosedDisconnectVoids();
        firstPackMountedAndConnected();
        secondPackLandedStopsTheWork();
        done(hands.reSequence(
                "ingrid", "pdu-lugs", "commissioning", List.of("ENERGISING"), "distribution unit not delivered"));
    }

    private void motorFitted() {
        refused(hands.entry("linh", "motor-fit", "TW-140", torque("190", 6)), "isolation.sourceMayBeAboard");
        done(hands.step("amara", "declare-no-source", Map.of("lookedFor", Isolating.LOOKED_FOR)));
        done(hands.entry("linh", "motor-fit", "TW-140", torque("190", 6)));
        done(hands.entry(
                "linh",
                "motor-serial",
                Map.of(
                        "serial",
                        "TM" + String.format("%06d", Math.floorMod(vehicle.vin().hashCode(), 1_000_000)))));
        refused(hands.entry("linh", "propshaft", "TW-120", Map.of()), "station.classAByTick");
        fails(hands.entry(
                "linh",
                "propshaft",
                "TW-120",
                Map.of(
                        "boltsNm",
                        List.of("71", "71", "71", "71", "71", "71", "71", "80"),
                        "anglesDeg",
                        List.of("30", "30", "30", "30", "30", "30", "30", "30"))));
        refused(hands.entry("linh", "propshaft", "TW-120", shaft()), "station.nonconforming");
        done(hands.dispose("kofi", 1, "REWORK", "new fasteners, tightened again"));
        done(hands.entry("linh", "propshaft", "TW-120", shaft()));
        done(hands.entry("linh", "propshaft-lot", Map.of("lot", "L-2207")));
        done(hands.entry("linh", "cable-tray", Map.of()));
    }

    private void coolingFitted() {
        refused(hands.entry("linh", "coolant-flange", "TW-203", torque("48", 5)), "works.instrumentOutOfCalibration");
        done(hands.entry("linh", "coolant-flange", "TW-202", torque("48", 5)));
        done(hands.entry("linh", "coolant-hold", Map.of()));
        refused(hands.entry("linh", "coolant-hold", Map.of()), "station.stillWaiting");
        clock.pass(Duration.ofMinutes(10));
        done(hands.entry("linh", "coolant-hold", Map.of()));
        done(hands.entry("linh", "coolant-drop", "PG-01", Map.of("reading", "0.02")));
    }

    private void isolatedBare() {
        isolation.planned();
        notYet("issue-permit", "ewa", Isolating.permit("linh", "land pack 1", "TP-BUS"), "isolation.notNowIssuePermit");
        isolation.shutDown();
        isolation.opened(FIRST_SOURCES);
        refused(lock("linh", "LK-03", "TG-03"), "isolation.isolatorLocksFirst");
        isolation.locked("amara", "LK-01", "TG-01");
        refused(
                hands.step(
                        "amara",
                        "prove-tester-before",
                        Map.of(
                                "scope",
                                "ALL_POINTS",
                                "testerCode",
                                "VT-01",
                                "sourceCode",
                                "PU-01",
                                "sourceVolt",
                                "240",
                                "readingVolt",
                                "239")),
                "isolation.waitNotOver",
                "isolating.waitUntil");
        isolation.locked("linh", "LK-03", "TG-03");
        clock.pass(Duration.ofMinutes(10));
        isolation.testerProvedBefore();
        isolation.pointsMeasured(BARE);
        notYet("witness-proof", "arjun", Map.of(), "isolation.proofNotFinished");
        notYet("issue-permit", "ewa", Isolating.permit("linh", "land pack 1", "TP-BUS"), "isolation.notNowIssuePermit");
        isolation.testerProvedAfter();
        notYet("witness-proof", "amara", Map.of(), "isolation.witnessIsProver");
        isolation.does("arjun", "witness-proof", Map.of());
        refused(
                hands.step("amara", "issue-permit", Isolating.permit("linh", "land pack 1", "TP-BUS")),
                "isolation.notAppointed");
        isolation.permitOut(1, "land pack 1", "TP-BUS");
        refused(hands.entry("tomasz", "pack2-bond", "TW-105", torque("20", 2)), "isolation.ownLockMissing");
    }

    /** The torques are kept and do not count; the pack is aboard with its disconnect closed, so nothing is proved any more. */
    private void landedOnAClosedDisconnectVoids() {
        refused(hands.entry("linh", "pack1-mount", "TW-140", torque("120", 8)), "station.sourceStillClosed");
        refused(hands.entry("linh", "pack2-bond", "TW-105", torque("20", 2)), "isolation.notInForce");
        notYet(
                "plan",
                "amara",
                Map.of("confirmed", List.of("DAMAGE_LOOKED_FOR", "AREA_BARRIERED")),
                "isolation.locksStillOn");
        isolation.does("linh", "lock-off", Map.of("lock", "LK-03"));
        isolation.does("amara", "lock-off", Map.of("lock", "LK-01"));
    }

    private void firstPackMountedAndConnected() {
        isolation.secured(List.of("INLET-DC", "LV-24V", "WHEELS", "CAPACITORS", "PACK-1"));
        isolation.locked("linh", "LK-03", "TG-03");
        clock.pass(Duration.ofMinutes(10));
        isolation.provedDead(ONE_PACK);
        isolation.permitOut(2, "mount and connect pack 1", "TP-PACK1");
        done(hands.entry("linh", "pack1-mount", "TW-140", torque("120", 8)));
        done(hands.entry("linh", "pack1-bond", "TW-105", torque("20", 2)));
        done(hands.entry("linh", "pack1-lugs", "TW-105", torque("20", 2)));
    }

    private void secondPackLandedStopsTheWork() {
        isolation.opened(List.of("PACK-2"));
        done(hands.entry("linh", "pack2-mount", "TW-140", torque("120", 8)));
        refused(hands.entry("linh", "pack2-bond", "TW-105", torque("20", 2)), "isolation.notInForce");
        clock.pass(Duration.ofMinutes(10));
        isolation.provedDead(TWO_PACKS);
        isolation.permitOut(3, "connect pack 2", "TP-PACK2");
        done(hands.entry("linh", "pack2-bond", "TW-105", torque("20", 2)));
        done(hands.entry("linh", "pack2-lugs", "TW-105", torque("20", 2)));
    }

    /** Energising is barred by what is owed; the vehicle goes on dead, its isolation given up, and counts as live. */
    private void leavesUnrestoredWhileWorkIsOwed() {
        isolation.does("linh", "hand-back", Map.of("complete", "true", "clear", "true", "opened", "true"));
        isolation.does("linh", "lock-off", Map.of("lock", "LK-03"));
        isolation.does("ewa", "cancel-permit", Map.of("permit", "3"));
        notYet("check-restoration", "linh", Map.of("check", "TOOLS", "passed", "true"), "isolation.checkedOwnWork");
        isolation.checked(AFTER_OPENING);
        refused(
                hands.step("amara", "restore", Map.of("lock", "LK-01", "confirmed", RESTORING)),
                "isolation.energisingBarred");
        refused(hands.sign("mateo", "fitting", PASSWORD), "gate.ownWork");
        done(hands.sign("hana", "fitting", PASSWORD));
        refused(hands.move("fatima", "FORWARD", "ST-3"), "line.locksOn");
        isolation.does("amara", "lock-off", Map.of("lock", "LK-01"));
        done(hands.move("fatima", "FORWARD", "ST-3"));
    }

    private void commissioned() {
        done(hands.fact("ingrid", "wheelchair_ramp", "false"));
        isolation.secured(List.of("INLET-DC", "LV-24V", "WHEELS", "CAPACITORS", "PACK-1", "PACK-2"));
        isolation.locked("linh", "LK-03", "TG-03");
        clock.pass(Duration.ofMinutes(10));
        isolation.provedDead(TWO_PACKS);
        isolation.permitOut(4, "connect the distribution unit, measure bonding", "TP-BUS");
        done(hands.entry("linh", "pdu-lugs", "TW-105", torque("20", 4)));
        done(hands.entry("linh", "bonding-pack1", "BO-01", Map.of("reading", "0.02")));
        testedUnderASanction();
        isolation.does("ewa", "cancel-permit", Map.of("permit", "4"));
        isolation.does("amara", "hand-back", Map.of("complete", "true", "clear", "true", "opened", "true"));
        isolation.checked(AFTER_OPENING);
        isolation.does("amara", "restore", Map.of("lock", "LK-01", "confirmed", RESTORING));
    }

    private void testedUnderASanction() {
        refused(hands.entry("amara", "insulation-bus", "IT-01", Map.of("reading", "2.1")), "isolation.notUnderTest");
        Map<String, Object> sanction = Map.of(
                "holder",
                "W-1001",
                "what",
                "insulation resistance of the bus at 1000 V",
                "excluded",
                "packs",
                "hazards",
                "the tester puts 1000 V on the bus",
                "instrumentCode",
                "IT-01",
                "confirmed",
                List.of("AREA_CLEAR"));
        refused(hands.step("ewa", "issue-sanction", sanction), "isolation.othersLocksOn");
        isolation.does("linh", "lock-off", Map.of("lock", "LK-03"));
        isolation.does("ewa", "issue-sanction", sanction);
        isolation.does("amara", "read-paper", Map.of("paper", "5"));
        done(hands.entry("amara", "insulation-bus", "IT-01", Map.of("reading", "2.1")));
        isolation.does("amara", "end-test", Map.of("confirmed", List.of("DISCHARGED")));
    }

    private void worksLive() {
        done(hands.entry("arjun", "software-vcu", Map.of("version", "4.2.1")));
        refused(hands.entry("arjun", "dcdc-voltage", "MM-01", Map.of("reading", "28.1")), "isolation.noLivePermit");
        refused(hands.step("ewa", "issue-live-permit", livePermit("GL-09")), "isolation.glovesUnfit");
        isolation.does("ewa", "issue-live-permit", livePermit("GL-07"));
        isolation.does("arjun", "read-paper", Map.of("paper", "6"));
        isolation.does("amara", "read-paper", Map.of("paper", "6"));
        done(hands.entry("arjun", "dcdc-voltage", "MM-01", Map.of("reading", "28.1")));
        insulationByVoltmeter();
        isolation.does("arjun", "hand-back", Map.of("complete", "true", "clear", "true", "opened", "false"));
    }

    /** The tool chooses the rail and the resistors; what cannot be true and what is not shown pass nothing. */
    private void insulationByVoltmeter() {
        refused(voltmeter("700", "470", "245", ""), "station.determineRailsExceed");
        refused(voltmeter("700", "437.5", "218.8", ""), "station.nextResistor");
        refused(voltmeter("700", "437.5", "218.8", "440"), "station.determineImpossible");
        // No two vehicles read alike to every digit: the tool would ask for a repeat.
        boolean byPages = vehicle.order().contains("PAGE");
        Hands.Answer undecided = voltmeter("700", "542.1", "137.3", byPages ? "294.4" : "294.5");
        assertThat(undecided.toString())
                .as("kept, and passes nothing")
                .containsAnyOf("UNDECIDED", "Not shown to conform");
        done(voltmeter("700", "437.5", "218.8", byPages ? "157.3" : "157.1"));
        done(hands.entry(
                "arjun",
                "monitor",
                Map.of(
                        "readings",
                        readings(
                                "alarmNegative alarm",
                                "alarmNegativeS 4.1",
                                "alarmPositive alarm",
                                "alarmPositiveS 5.2",
                                "clearNegative silent",
                                "clearPositive silent"))));
    }

    private Hands.Answer voltmeter(String busV, String negativeV, String positiveV, String withResistorV) {
        List<Map<String, String>> all = readings(
                "busV " + busV, "negativeToChassisV " + negativeV, "positiveToChassisV " + positiveV, "meterMOhm 10");
        if (!withResistorV.isEmpty()) {
            all = java.util.stream.Stream.concat(all.stream(), readings("withResistorV " + withResistorV).stream())
                    .toList();
        }
        return hands.entry("arjun", "insulation-live", "MM-01", Map.of("readings", all));
    }

    private static List<Map<String, String>> readings(String... all) {
        return java.util.Arrays.stream(all)
                .map(one -> one.split(" "))
                .map(pair -> Map.of("name", pair[0], "value", pair[1]))
                .toList();
    }

    private static Map<String, Object> livePermit(String gloves) {
        return Map.of(
                "tester",
                "W-1006",
                "second",
                "W-1001",
                "what",
                "measure the 24 V supply with the converter running",
                "excluded",
                "everything else",
                "hazards",
                "700 V on the bus",
                "glovesCode",
                gloves,
                "confirmed",
                List.of(
                        "NO_OTHER_WAY",
                        "AREA_BARRIERED",
                        "CUT_OFF_AT_HAND",
                        "RESCUE_READY",
                        "GLOVES_AIR_TESTED",
                        "GLOVES_FIT",
                        "PROTECTION_WORN"));
    }

    private void leavesTheLine() {
        done(hands.file("amara", "labels"));
        done(hands.file("mateo", "brake-report"));
        done(hands.entry("amara", "steering", Map.of()));
        refused(hands.sign("mateo", "commissioning", PASSWORD), "gate.ownWork");
        done(hands.sign("hana", "commissioning", PASSWORD));
        done(hands.move("fatima", "OUT", "YARD"));
        done(hands.moveBack("fatima", "commissioning", "ST-3"));
        done(hands.move("fatima", "OUT", "YARD"));
    }

    private void handedOver() {
        refused(hands.handOver("leilani", "depot foreman"), "handover.factsMissing");
        FACTS.forEach((fact, stated) -> done(hands.fact("leilani", fact, stated)));
        refused(hands.handOver("leilani", "depot foreman"), "handover.documentMissing");
        String tomorrow = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).toString();
        refused(hands.issue("leilani", "weight-record", PASSWORD), "handover.needsWeights");
        refused(hands.issue("mateo", "rescue-sheet", PASSWORD), "works.competenceMissing");
        refused(hands.issue("kofi", "rescue-sheet", "wrong"), "works.passwordWrong");
        done(hands.issue("kofi", "rescue-sheet", PASSWORD));
        DOCUMENTS.forEach(
                id -> done(hands.document("leilani", id, "no. 17/" + id, id.equals("GB-28") ? tomorrow : "")));
        clock.pass(Duration.ofDays(1));
        refused(hands.handOver("leilani", "depot foreman"), "handover.documentExpired");
        done(hands.document("leilani", "GB-28", "no. 18/GB-28", ""));
        refused(hands.handOver("leilani", "depot foreman"), "handover.appointmentOpen");
        done(hands.passed("leilani", "LANE"));
        done(hands.passed("leilani", "ROAD"));
        onTheRoad();
        atTheBay();
        done(hands.handOver("leilani", "depot foreman"));
        done(hands.bay().closed("amara", 1));
        refused(hands.handOver("leilani", "depot foreman"), "handover.handedOverAlready", "handover.given");
    }

    /** The receipt stands for exactly what was shown: an agreed snag more, and it is signed anew. */
    private void atTheBay() {
        Bay bay = hands.bay();
        refused(hands.handOver("leilani", "depot foreman"), "handover.recordNoState");
        refused(bay.signed("leilani", true), "handover.recordNoThings");
        refused(bay.read("amara", 611_000), "handover.roadOdometerBack");
        done(bay.read("amara", 612_061));
        done(bay.pictured("amara"));
        done(bay.given("leilani"));
        done(bay.instructed("leilani"));
        done(bay.warranty("leilani", 612_061));
        refused(hands.handOver("leilani", "depot foreman"), "handover.recordNoReceipt");
        done(bay.signed("leilani", true));
        done(bay.snag("leilani", "Scratch in the paint"));
        refused(hands.handOver("leilani", "depot foreman"), "handover.recordReceiptStale");
        refused(bay.nobodySigns("leilani", "W-1014", PASSWORD), "handover.recordWitness");
        refused(bay.nobodySigns("leilani", "W-1011", "wrong"), "handover.recordWitnessPassword");
        done(bay.nobodySigns("leilani", "W-1011", PASSWORD));
        done(bay.signed("leilani", false));
        done(hands.issue("kofi", "handover-record", PASSWORD));
    }

    private void onTheRoad() {
        refused(hands.roadDrive("amara", 612_000, 612_030, ""), "handover.roadNotReleased", "handover.roadNotYet");
        refused(hands.handOver("leilani", "depot foreman"), "handover.roadNotProved");
        refused(hands.roadRelease("mateo", "W-1006", PASSWORD), "handover.roadOwnWork");
        refused(hands.roadRelease("hana", "W-1006", "wrong"), "works.passwordWrong");
        done(hands.roadRelease("hana", "W-1006", PASSWORD));
        done(hands.hold("mateo", "SAFETY", List.of("MOVE"), "a wheel nut is to be looked at"));
        refused(hands.roadDrive("amara", 612_000, 612_030, ""), "handover.roadHeld");
        done(hands.release("kofi", 2, "the nut is tight"));
        refused(hands.roadDrive("amara", 611_000, 612_030, ""), "handover.roadOdometerBack");
        done(hands.roadDrive("amara", 612_000, 612_030, "Brakes pull to the left"));
        refused(hands.roadDrive("amara", 612_030, 612_060, ""), "handover.roadNotReleased", "handover.roadEnded");
        refused(hands.handOver("leilani", "depot foreman"), "handover.roadNotProved");
        done(hands.roadRelease("hana", "W-1006", PASSWORD));
        done(hands.roadDrive("amara", 612_030, 612_060, ""));
    }

    private void notYet(String step, String user, Map<String, Object> with, String key) {
        refused(hands.step(user, step, with), key, "isolating.way");
    }

    private Hands.Answer lock(String user, String lock, String tag) {
        return hands.step(user, "lock-on", Map.of("lock", lock, "tag", tag));
    }

    private String packSerial(int pack) {
        return "PK" + String.format("%07d", Math.floorMod(vehicle.vin().hashCode(), 10_000_000)) + pack;
    }

    private static Map<String, Object> torque(String nm, int bolts) {
        return Map.of("boltsNm", java.util.Collections.nCopies(bolts, nm));
    }

    private static Map<String, Object> shaft() {
        return Map.of(
                "boltsNm", java.util.Collections.nCopies(8, "71"), "anglesDeg", java.util.Collections.nCopies(8, "30"));
    }

    static void done(Hands.Answer answer) {
        assertThat(answer.done()).as(answer.toString()).isTrue();
    }

    /** On record as a result outside its limits. */
    static void fails(Hands.Answer answer) {
        assertThat(answer.done()).as(answer.toString()).isFalse();
    }

    /** Refused, or kept as something that does not count, for a rule; a page that does not offer it names one of the others. */
    static void refused(Hands.Answer answer, String... keys) {
        assertThat(answer.done()).as(answer.toString()).isFalse();
        assertThat(List.of(keys)).as(answer.toString()).anyMatch(answer::names);
    }
}
