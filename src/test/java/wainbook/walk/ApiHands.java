package wainbook.walk;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** By the API, as a script would. */
final class ApiHands implements Hands {

    static final String PASSWORD = "paced-line-demo";
    static final List<String> CLEAR_TO_MOVE = List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan");

    /** @param body of the entry that was written; empty where nothing was */
    private record Said(Response response, Map<String, Object> body) implements Answer {

        @Override
        public boolean done() {
            int status = response.statusCode();
            assertThat(status).as(response.asString()).isIn(200, 201, 409, 422);
            return status < 300 && !body.containsKey("notCountedFor") && !"FAIL".equals(body.get("verdict"));
        }

        @Override
        public boolean names(String key) {
            return response.statusCode() < 300
                    ? String.valueOf(body.get("notCountedFor")).contains(key)
                    : response.jsonPath().getList("reasons.key").contains(key);
        }

        @Override
        public String toString() {
            return response.statusCode() + " " + response.asString() + " " + body;
        }
    }

    private final Vehicle vehicle;
    private final WalkClock clock;

    ApiHands(Vehicle vehicle, WalkClock clock) {
        this.vehicle = vehicle;
        this.clock = clock;
    }

    @Override
    public Answer order(String user, Map<String, String> facts) {
        var body = body();
        body.putAll(Map.of(
                "number", vehicle.order(),
                "operator", "Vale and Fen Community Buses",
                "variant", "bus-12m",
                "route", "BUS-12M",
                "promisedOn", "2027-02-01"));
        body.put(
                "facts",
                facts.entrySet().stream()
                        .map(fact -> Map.of("fact", fact.getKey(), "stated", fact.getValue()))
                        .toList());
        return said(as(user).body(body).post("/api/v1/orders"));
    }

    @Override
    public Answer donor(String user, String vin, String registration, int odometerKm) {
        return post(user, "/donor", Map.of("vin", vin, "registration", registration, "odometerKm", odometerKm));
    }

    @Override
    public Answer fact(String user, String fact, String stated) {
        return post(user, "/facts", Map.of("fact", fact, "stated", stated));
    }

    @Override
    public Answer entry(String user, String item, Map<String, Object> reply) {
        return post(user, "/entries", Map.of("item", item, "reply", reply));
    }

    @Override
    public Answer entry(String user, String item, String instrument, Map<String, Object> reply) {
        return post(user, "/entries", Map.of("item", item, "instrument", instrument, "reply", reply));
    }

    @Override
    public Answer file(String user, String item) {
        boolean photograph = Picture.isPhotograph(item);
        String fingerprint = as(user).contentType(photograph ? "image/png" : "application/pdf")
                .body(photograph ? Picture.PNG : Picture.PDF)
                .post(path("/files"))
                .jsonPath()
                .getString("sha256");
        return entry(user, item, Map.of("sha256", fingerprint));
    }

    @Override
    public Answer voidLast(String user, String item, String reason) {
        String entry =
                as(user).get(path("/sheet")).jsonPath().getString("items.find { it.item == '" + item + "' }.passing");
        return post(user, "/voids", Map.of("entry", entry, "reason", reason));
    }

    @Override
    public Answer step(String user, String step, Map<String, Object> with) {
        Map<String, Object> fields = new HashMap<>(with);
        if (List.of("issue-permit", "issue-sanction", "issue-live-permit").contains(step)) {
            fields.putIfAbsent(
                    "validUntil", clock.instant().plus(Duration.ofHours(1)).toString());
        }
        return post(user, "/isolation/" + step, Map.of("with", fields, "password", PASSWORD));
    }

    @Override
    public Answer sign(String user, String stage, String password) {
        return sign(user, stage, password, fingerprint(user, stage));
    }

    @Override
    public Answer signAfter(String user, String stage, Runnable meanwhile) {
        String seen = fingerprint(user, stage);
        meanwhile.run();
        return sign(user, stage, PASSWORD, seen);
    }

    @Override
    public Answer refuse(String user, String stage, List<String> items, String reason) {
        return post(
                user,
                "/gates/" + stage + "/refusal",
                Map.of(
                        "fingerprint",
                        fingerprint(user, stage),
                        "items",
                        items,
                        "reason",
                        reason,
                        "rejectsDonor",
                        false));
    }

    @Override
    public Answer move(String user, String direction, String to) {
        return post(
                user,
                "/moves",
                Map.of("direction", direction, "to", to, "confirmed", CLEAR_TO_MOVE, "reason", "the walk goes on"));
    }

    @Override
    public Answer moveBack(String user, String stage, String to) {
        return post(
                user,
                "/moves",
                Map.of(
                        "direction",
                        "BACK",
                        "stage",
                        stage,
                        "to",
                        to,
                        "confirmed",
                        CLEAR_TO_MOVE,
                        "reason",
                        "something was forgotten"));
    }

    @Override
    public Answer hold(String user, String kind, List<String> stops, String reason) {
        return post(user, "/holds", Map.of("kindOfHold", kind, "stops", stops, "reason", reason));
    }

    @Override
    public Answer release(String user, int hold, String reason) {
        return post(user, "/holds/" + hold + "/release", Map.of("reason", reason));
    }

    @Override
    public Answer dispose(String user, int nonconformity, String disposition, String because) {
        return post(
                user,
                "/nonconformities/" + nonconformity + "/disposition",
                Map.of("disposition", disposition, "because", because));
    }

    @Override
    public Answer reSequence(String user, String item, String toStage, List<String> bars, String reason) {
        return post(user, "/re-sequenced", Map.of("item", item, "toStage", toStage, "bars", bars, "reason", reason));
    }

    @Override
    public Answer document(String user, String requirement, String reference, String validUntil) {
        Map<String, Object> note = new HashMap<>(Map.of("state", "IN_HAND", "reference", reference));
        if (!validUntil.isEmpty()) {
            note.put("validUntil", validUntil);
        }
        return post(user, "/documents/" + requirement, note);
    }

    @Override
    public Answer passed(String user, String appointment) {
        return post(user, "/appointments/" + appointment + "/attended", Map.of("passed", true, "remark", ""));
    }

    @Override
    public Answer issue(String user, String document, String password) {
        return post(user, "/issues/" + document, Map.of("password", password));
    }

    @Override
    public Answer roadRelease(String user, String driver, String password) {
        String fingerprint = as(user).get(path("/road")).jsonPath().getString("fingerprint");
        return post(
                user,
                "/road/release",
                Map.of(
                        "fingerprint",
                        fingerprint,
                        "driver",
                        driver,
                        "plates",
                        "Trade plates 114",
                        "insurance",
                        "Cover 20417",
                        "password",
                        password));
    }

    @Override
    public Answer roadDrive(String user, int fromKm, int toKm, String defects) {
        return post(
                user,
                "/road/drives",
                Map.of(
                        "route",
                        "Bypass and back",
                        "loadKg",
                        1000,
                        "fromKm",
                        fromKm,
                        "toKm",
                        toKm,
                        "packsDegC",
                        "27.5",
                        "defects",
                        defects,
                        "fit",
                        defects.isEmpty()));
    }

    @Override
    public Bay bay() {
        return new ApiBay(this, vehicle, clock);
    }

    @Override
    public Answer handOver(String user, String receivedBy) {
        int seen = as(user).get(path("/documents")).jsonPath().getInt("seen");
        return post(user, "/handover", Map.of("receivedBy", receivedBy, "seen", seen));
    }

    private Answer sign(String user, String stage, String password, String fingerprint) {
        return post(user, "/gates/" + stage + "/sign-off", Map.of("fingerprint", fingerprint, "password", password));
    }

    private String fingerprint(String user, String stage) {
        return as(user).get(path("/gates/" + stage)).jsonPath().getString("fingerprint");
    }

    Answer post(String user, String path, Map<String, ?> fields) {
        var body = body();
        body.putAll(fields);
        return said(as(user).body(body).post(path(path)));
    }

    /** With what was written, as an auditor reads it on the record. */
    private Said said(Response response) {
        if (response.statusCode() >= 300) {
            return new Said(response, Map.of());
        }
        List<String> lines = as("ruben")
                .get("/api/v1/ledger/streams/work-order/" + vehicle.order())
                .jsonPath()
                .getList("lines");
        int number = response.jsonPath().getInt("number");
        return new Said(response, JsonPath.from(lines.get(number - 1)).getMap("body"));
    }

    private String path(String path) {
        return "/api/v1/orders/" + vehicle.order() + path;
    }

    private static Map<String, Object> body() {
        return new HashMap<>(Map.of("id", UUID.randomUUID().toString()));
    }

    static RequestSpecification as(String user) {
        return given().auth().preemptive().basic(user, PASSWORD).contentType("application/json");
    }
}
