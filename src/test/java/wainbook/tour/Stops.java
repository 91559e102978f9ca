package wainbook.tour;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wainbook.setup.Folder;

/** Where the tour stops at each address that has parameters or says more when it is asked something. */
final class Stops {

    /** It starves while the vehicle before it is stuck. */
    static final String EMPTY_STATION = "/stations/ST-8";

    private static final Asking INGRID = new Asking("ingrid");

    private final List<Map<String, Object>> orders = INGRID.get("/orders").getList("$");
    private final Map<String, List<String>> stops = new LinkedHashMap<>();

    Stops() {
        orders();
        atStations();
        handovers();
        registers();
        papers();
        sentIn();
    }

    /** Nothing at an address with parameters that the tour does not know. */
    List<String> at(Door door) {
        return stops.getOrDefault(door.path(), door.hasParameters() ? List.of() : List.of(door.path()));
    }

    /** The vehicle at a stage of the line. */
    String at(String stage) {
        return orders.stream()
                .filter(order -> "ON_LINE".equals(order.get("phase")) && stage.equals(order.get("stage")))
                .map(order -> (String) order.get("number"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no vehicle at " + stage));
    }

    String inPhase(String phase) {
        return orders.stream()
                .filter(order -> phase.equals(order.get("phase")))
                .map(order -> (String) order.get("number"))
                .reduce((one, later) -> later)
                .orElseThrow(() -> new AssertionError("no vehicle is " + phase));
    }

    private void orders() {
        String stuck = at("controls");
        String held = at("driveline");
        put(
                "/orders/{order}",
                Stream.of(
                                stuck,
                                held,
                                at("packs"),
                                inPhase("OFF_LINE"),
                                inPhase("FINISHED"),
                                inPhase("HANDED_OVER"),
                                inPhase("ORDERED"))
                        .map(order -> "/orders/" + order)
                        .toList());
        put(
                "/orders/{order}/book",
                "/orders/" + stuck + "/book",
                "/orders/" + inPhase("HANDED_OVER") + "/book",
                "/orders/" + inPhase("ORDERED") + "/book");
        put("/orders/{order}/return", "/orders/" + inPhase("HANDED_OVER") + "/return");
        put("/orders/{order}/parts/off", "/orders/" + inPhase("ORDERED") + "/parts/off?part=PACK-1&serial=none");
        put("/orders/{order}/donor", "/orders/" + inPhase("ORDERED") + "/donor");
        put(
                "/orders/{order}/facts",
                "/orders/" + stuck + "/facts?fact=packs",
                "/orders/" + inPhase("ORDERED") + "/facts?fact=keeper");
        put("/orders/{order}/help", "/orders/" + held + "/help");
        put("/orders/{order}/help/{call}", "/orders/" + at("packs") + "/help/1");
        put("/orders/{order}/hold", "/orders/" + stuck + "/hold");
        put("/orders/{order}/holds/{hold}/release", "/orders/" + held + "/holds/1/release");
        put(
                "/orders/{order}/move",
                "/orders/" + at("final") + "/move",
                "/orders/" + at("auxiliaries") + "/move",
                "/orders/" + inPhase("OFF_LINE") + "/move");
        int number = INGRID.get("/orders/" + stuck + "/nonconformities").getInt("[-1].opened.nonconformity");
        put(
                "/orders/{order}/nonconformities/{number}/disposition",
                "/orders/" + stuck + "/nonconformities/" + number + "/disposition");
        put("/orders/{order}/rebinding", "/orders/" + at("packs") + "/rebinding");
        put("/orders/{order}/promises", "/orders/" + stuck + "/promises", "/orders/" + at("packs") + "/promises");
        put(
                "/orders/{order}/calibration",
                List.of("ON_LINE", "FINISHED", "HANDED_OVER", "ORDERED").stream()
                        .flatMap(phase -> askedToDrive(phase).limit(1))
                        .map(order -> "/orders/" + order + "/calibration")
                        .toList());
        put(
                "/orders/{order}/specification",
                "/orders/" + stuck + "/specification",
                "/orders/" + at("packs") + "/specification",
                "/orders/" + inPhase("ORDERED") + "/specification");
        put(
                "/orders/{order}/specification/energy",
                "/orders/" + stuck + "/specification/energy",
                "/orders/" + at("packs") + "/specification/energy?packs=5");
        put("/orders/{order}/report", "/orders/" + stuck + "/report");
    }

    /** Of the kinds whose orders ask for a calibration; a vehicle that came back has an order that does not. */
    private Stream<String> askedToDrive(String phase) {
        return orders.stream()
                .filter(order -> phase.equals(order.get("phase"))
                        && List.of("bus-12m", "hookloader-26t").contains(order.get("vehicleKind")))
                .map(order -> (String) order.get("number"))
                .filter(number -> !number.matches(".*-[0-9]"));
    }

    private void atStations() {
        List<String> all = orders.stream()
                .filter(order -> "ON_LINE".equals(order.get("phase")) || "DONOR_RECEIVED".equals(order.get("phase")))
                .map(order -> "/station/" + order.get("number"))
                .toList();
        put("/station/{order}", all);
        put("/stations/{station}", EMPTY_STATION);
        put("/station/{order}/{item}/later", "/station/" + at("final") + "/" + openItem(at("final")) + "/later");
        put(
                "/gates/{order}/{stage}",
                "/gates/" + at("distribution") + "/distribution",
                "/gates/" + at("controls") + "/controls",
                "/gates/" + at("auxiliaries") + "/auxiliaries");
        put(
                "/isolation/{order}",
                "/isolation/" + at("packs"),
                "/isolation/" + at("final"),
                "/isolation/" + at("prepare"));
    }

    /** The last of its stage: work goes from the first one on. */
    String openItem(String order) {
        List<String> items = INGRID.get("/orders/" + order + "/sheet").getList("items.item");
        return items.get(items.size() - 1);
    }

    private void handovers() {
        String finished = inPhase("FINISHED");
        put(
                "/handover/{order}",
                "/handover/" + finished,
                "/handover/" + finished + "?set=DE",
                "/handover/" + inPhase("HANDED_OVER"));
        String document = INGRID.get("/orders/" + finished + "/documents").getString("documents[0].id");
        put("/handover/{order}/documents/{requirement}", "/handover/" + finished + "/documents/" + document);
    }

    private void registers() {
        List<String> calculations = new ArrayList<>(INGRID.get("/calculations").<String>getList("name").stream()
                .map(name -> "/calculations/" + name)
                .toList());
        calculations.add("/calculations/bonding?currentA=0.2&voltageV=0.0146");
        calculations.add(
                "/calculations/containment?foundAt=40%3B2.9&goodAt=40%3B0.8&windowDays=35&uncertaintyPercent=0.5"
                        + "&readings=P-11%3B31%3B108.2%3B108%3B132%0AP-8%3B21%3B119.6%3B108%3B132");
        put("/calculations/{name}", calculations);
        put("/instruments/{code}", "/instruments/TW-105", "/instruments/" + firstInstrument());
        put("/instruments/{code}/calibrations/new", "/instruments/TW-105/calibrations/new");
        put("/instruments/{code}/checks", "/instruments/TW-105/checks");
        put("/people/{number}", "/people/W-1001", "/people/" + StageSetting.LONG_PERSON);
        put("/setup/passwords/{person}", "/setup/passwords/W-1001");
        put("/forecast", "/forecast", "/forecast?by=line");
        put("/forecast/what-if", "/forecast/what-if", "/forecast/what-if?secondStation=commissioning");
        put("/orders/{order}/appointments", "/orders/" + inPhase("FINISHED") + "/appointments");
        put(
                "/handover/{order}/issue",
                "/handover/" + inPhase("FINISHED") + "/issue",
                "/handover/" + at("final") + "/issue");
        put(
                "/handover/{order}/issue/{document}",
                "/handover/" + inPhase("FINISHED") + "/issue/rescue-sheet",
                "/handover/" + inPhase("FINISHED") + "/issue/high-voltage-record",
                "/handover/" + at("packs") + "/issue/weight-record");
        put("/process/documents/{document}", "/process/documents/weight-record");
        put(
                "/orders/{order}/road",
                "/orders/" + at("final") + "/road",
                "/orders/" + inPhase("FINISHED") + "/road",
                "/orders/" + inPhase("HANDED_OVER") + "/road");
        put(
                "/orders/{order}/carbon",
                "/orders/" + inPhase("HANDED_OVER") + "/carbon",
                "/orders/" + at("packs") + "/carbon");
        put(
                "/handover/{order}/record",
                "/handover/" + inPhase("FINISHED") + "/record",
                "/handover/" + inPhase("HANDED_OVER") + "/record");
        put(
                "/handover/{order}/record/receipt",
                "/handover/" + inPhase("FINISHED") + "/record/receipt",
                "/handover/" + inPhase("HANDED_OVER") + "/record/receipt");
        put(
                "/orders/{order}/awaited",
                "/orders/WB-0202/awaited",
                "/orders/WB-0202/awaited?open=1",
                "/orders/WB-0201/awaited");
        strip();
        put("/line/over-time/{order}", "/line/over-time/WB-0194");
        put("/trace", "/trace", "/trace?q=" + vin());
        containments();
        campaigns();
        put("/permits/{vehicle}/{number}", "/permits/_works/1", "/permits/" + at("driveline") + "/1");
        put("/safety/near-misses/{number}", "/safety/near-misses/1", "/safety/near-misses/3");
        put("/safety/stops/{vehicle}/{number}", "/safety/stops/_works/1");
        put("/safety/visitors/in", "/safety/visitors/in");
        put("/packs", "/packs", "/packs?standing=EVERY");
        put("/packs/damaged", "/packs/damaged", "/packs/damaged?serial=PK70000001");
        put("/packs/{serial}", "/packs/PK70000006", "/packs/PK70000007", "/packs/PK70000008", "/packs/PK70000003");
        put("/packs/{serial}/check", "/packs/PK70000001/check");
        put(
                "/packs/{serial}/transport",
                "/packs/PK70000001/transport",
                "/packs/PK70000008/transport?condition=REACTIVE",
                "/packs/PK70000006/transport?condition=SOUND&load=vehicle");
        put(
                "/permits/new",
                "/permits/new",
                "/permits/new?sort=HOT_WORK&place=Welding+bay",
                "/permits/new?sort=LIFTING&order=" + at("packs"));
    }

    private void strip() {
        String finished = inPhase("FINISHED");
        String stripped = at("final");
        put(
                "/orders/{order}/strip",
                "/orders/" + finished + "/strip",
                "/orders/" + stripped + "/strip",
                "/orders/" + at("strip") + "/strip");
        put(
                "/orders/{order}/strip/{thing}",
                "/orders/" + stripped + "/strip/n2",
                "/orders/" + stripped + "/strip/strip.drain-fuel",
                "/orders/" + stripped + "/strip/strip.drain-oil");
        String destroyed = orders.stream()
                .filter(order -> "ON_LINE".equals(order.get("phase")) && "bus-12m".equals(order.get("variant")))
                .map(order -> (String) order.get("number"))
                .filter(order -> Integer.parseInt(order.substring(3)) < 200 - 2)
                .findFirst()
                .orElseThrow();
        put("/orders/{order}/strip/engine", "/orders/" + destroyed + "/strip/engine");
        put("/orders/{order}/strip/engine/certificate", "/orders/" + destroyed + "/strip/engine/certificate");
        put("/waste", "/waste", "/waste?which=every");
        put("/waste/new", "/waste/new", "/waste/new?code=160114");
        put("/waste/containers/{label}", "/waste/containers/C-0001", "/waste/containers/C-0101");
        put("/waste/containers/{label}/label", "/waste/containers/C-0101/label");
        put("/waste/containers/{label}/collection", "/waste/containers/C-0101/collection");
        String gone =
                INGRID.get("/waste/containers").getString("find { it.collected != null && it.label > 'C-0100' }.label");
        put("/waste/containers/{label}/note", "/waste/containers/" + gone + "/note", "/waste/containers/C-0002/note");
    }

    /** Opened in the rehearsal, over lots in vehicles handed over and in the works. */
    private void campaigns() {
        String one = "/campaigns/" + INGRID.get("/campaigns").getString("[0].number");
        var vehicles = INGRID.get(one).<Map<String, Object>>getList("vehicles");
        put("/trace/vehicle/{order}", "/trace/vehicle/" + inPhase("HANDED_OVER"), "/trace/vehicle/" + at("packs"));
        put("/campaigns/{number}", one);
        put(
                "/campaigns/new",
                "/campaigns/new",
                "/campaigns/new?match=ALL&sort1=SOFTWARE&code1=BMS*&sort2=LOT&code2=L-2601-00&to2=L-2646-99");
        put(
                "/campaigns/{number}/vehicles/{order}",
                vehicles.stream()
                        .map(vehicle -> one + "/vehicles/" + vehicle.get("order"))
                        .toList());
        put(
                "/campaigns/{number}/letter",
                vehicles.stream()
                        .filter(vehicle -> (int) vehicle.get("letters") > 0)
                        .limit(1)
                        .map(vehicle -> one + "/letter?operator="
                                + URLEncoder.encode((String) vehicle.get("operator"), StandardCharsets.UTF_8))
                        .toList());
    }

    /** Opened by the stage setting, over a wrench that was used on vehicles handed over and on the line. */
    private void containments() {
        String code = INGRID.get("/containments").getString("[0].containment");
        List<String> touched = INGRID.get("/containments/" + code).getList("vehicles.order");
        String one = "/quality/containments/" + code;
        put(
                "/quality/charts/{sort}/{code}",
                "/quality/charts/family/torque-indicating",
                "/quality/charts/joint/LV-TERMINAL",
                "/quality/charts/item/commissioning:bond-parts:1");
        put("/quality/containments/{code}", one);
        put(
                "/quality/containments/new",
                "/quality/containments/new",
                "/quality/containments/new?sort=LOT",
                "/quality/containments/new?sort=REVISION&code=" + StageSetting.REVISED + "&revision=1&reason=wrong",
                "/quality/containments/new?sort=COMPETENCE");
        put(
                "/quality/containments/{code}/vehicles/{order}",
                touched.stream()
                        .limit(3)
                        .map(order -> one + "/vehicles/" + order)
                        .toList());
        put(
                "/quality/containments/{code}/vehicles/{order}/letter",
                touched.stream()
                        .filter(order -> orders.stream()
                                .anyMatch(row ->
                                        order.equals(row.get("number")) && "HANDED_OVER".equals(row.get("phase"))))
                        .limit(1)
                        .map(order -> one + "/vehicles/" + order + "/letter")
                        .toList());
    }

    String containment() {
        return stops.get("/quality/containments/{code}").get(0);
    }

    private String firstInstrument() {
        return INGRID.get("/instruments").getString("[0].code");
    }

    String vin() {
        return orders.stream()
                .filter(order -> "HANDED_OVER".equals(order.get("phase")))
                .map(order -> (String) order.get("vin"))
                .findFirst()
                .orElseThrow();
    }

    private void papers() {
        String drafted = "/process/sheets/" + StageSetting.DRAFTED;
        String revised = "/process/sheets/" + StageSetting.REVISED;
        put("/paper/print", "/paper/print?from=1&to=8");
        put("/paper/{form}", "/paper/F-0001", "/paper/F-0003", "/paper/F-0004", "/paper/F-0007");
        put("/paper/{form}/comparison", "/paper/F-0001/comparison");
        put(
                "/paper/{form}/transcription",
                "/paper/F-0002/transcription",
                "/paper/F-0003/transcription?vehicle=" + at("packs") + "&photograph=" + photograph(),
                "/paper/F-0005/transcription?vehicle=" + at("packs") + "&photograph=" + photograph());
        put("/process/{thing}/new", "/process/sheets/new", "/process/routes/new", "/process/plans/new");
        put(
                "/process/{thing}/{called}",
                revised,
                revised + "?revision=1",
                "/process/routes/BUS-12M",
                "/process/plans/bus-12m");
        put("/process/{thing}/{called}/changes", revised + "/changes?from=1&to=2");
        put("/process/{thing}/{called}/draft", drafted + "/draft", revised + "/draft");
        put("/process/{thing}/{called}/draft/{group}", drafted + "/draft/item");
        put(
                "/process/{thing}/{called}/draft/{group}/{key}",
                drafted + "/draft/item/lv-batteries",
                drafted + "/draft/head/head");
    }

    private static String photograph() {
        return INGRID.handsIn("/paper/photographs", "/rehearsal/photograph.png");
    }

    private void sentIn() {
        Folder changed = Folder.copyOf(Folder.DEMO).replace("locks.csv", "LK-01", "LK-0001");
        Folder faulty = Folder.copyOf(Folder.DEMO).replace("people.csv", "auditor", "spectator");
        put("/setup/works/{upload}", StageSetting.sent("nadia", changed), StageSetting.sent("nadia", faulty));
    }

    private void put(String path, String... concrete) {
        put(path, List.of(concrete));
    }

    private void put(String path, List<String> concrete) {
        stops.put(path, concrete);
    }
}
