package wainbook.walk;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A bus from order to the first stage of the line by the API, stopped wherever a careful works would stop it. */
@QuarkusTest
class ApiWalkTest {

    private static final String ORDER = "WB-WALK-1";
    private static final String VIN = "WBKZZZ1234567890W";
    private static final List<String> CONFIRMED = List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan");

    @Test
    void a_donor_is_ordered_received_surveyed_accepted_and_moved_onto_the_line() {
        ordered();
        send("amara", "/donor", Map.of("id", id(), "vin", VIN, "registration", "VF12 ABC", "odometerKm", 612_000), 201);

        refused(sign("mateo", "intake", "paced-line-demo"), 409, "gate.itemOpen");
        surveyed();
        refused(sign("mateo", "intake", "not the password"), 422, "gate.passwordWrong");
        refused(sign("owen", "intake", "paced-line-demo"), 409, "works.competenceExpired");
        sign("mateo", "intake", "paced-line-demo").then().statusCode(201);

        move("ONTO_LINE", "ST-1").then().statusCode(201);
        refused(move("FORWARD", "ST-2"), 409, "line.gateUnsigned");
        refused(entry("yusuf", "refrigerant", Map.of("quantity", "2.1")), 409, "station.factsMissing");
        send("ingrid", "/facts", Map.of("id", id(), "fact", "air_conditioning", "stated", "true"), 201);
        assertThat(entry("yusuf", "refrigerant", Map.of("quantity", "2.1"))
                        .jsonPath()
                        .getList("reasons.key"))
                .containsExactly("works.competenceMissing");
        entry("amara", "refrigerant", Map.of("quantity", "2.1")).then().statusCode(201);

        refused(entry("amara", "drain-fuel", Map.of("quantity", "60")), 409, "station.notInOrder");
        holdStopsWorkUntilReleased();
        sameEntryTwiceWritesOnce();
    }

    private void holdStopsWorkUntilReleased() {
        send(
                "amara",
                "/holds",
                Map.of("id", id(), "kindOfHold", "QUALITY", "stops", List.of("WORK"), "reason", "crack suspected"),
                201);
        refused(entry("amara", "starter-batteries", Map.of("quantity", "110")), 409, "station.held");
        Response mayNot = send("fatima", "/holds/1/release", Map.of("id", id(), "reason", "go on"), 409);
        assertThat(mayNot.jsonPath().getList("reasons.key")).containsExactly("order.mayNotRelease");
        send("kofi", "/holds/1/release", Map.of("id", id(), "reason", "looked at, no crack"), 201);
    }

    private void sameEntryTwiceWritesOnce() {
        var once = Map.of("id", id(), "item", "starter-batteries", "reply", Map.of("quantity", "110"));
        Response first = send("amara", "/entries", once, 201);
        Response again = send("amara", "/entries", once, 200);
        assertThat(again.jsonPath().getString("hash"))
                .isEqualTo(first.jsonPath().getString("hash"));
    }

    private static void ordered() {
        given().auth()
                .preemptive()
                .basic("ingrid", "paced-line-demo")
                .contentType("application/json")
                .body(Map.of(
                        "id", id(),
                        "number", ORDER,
                        "operator", "Vale and Fen Community Buses",
                        "variant", "bus-12m",
                        "route", "BUS-12M",
                        "promisedOn", "2027-02-01",
                        "facts", List.of(Map.of("fact", "packs", "stated", "2"))))
                .post("/api/v1/orders")
                .then()
                .statusCode(201);
    }

    private static void surveyed() {
        entry("amara", "vin", Map.of("serial", VIN)).then().statusCode(201);
        entry("amara", "engine-number", Map.of("serial", "E-4711")).then().statusCode(201);
        entry("amara", "frame", Map.of("choice", "Sound")).then().statusCode(201);
        entry("amara", "tyres", Map.of("cells", List.of("6", "6", "7", "7", "8", "8", "8", "8")))
                .then()
                .statusCode(201);
        send(
                "amara",
                "/entries",
                Map.of("id", id(), "item", "received-front", "instrument", "WP-01", "reply", Map.of("reading", "4100")),
                201);
        entry("amara", "hazards", Map.of("words", "none")).then().statusCode(201);
    }

    private static Response entry(String user, String item, Map<String, Object> reply) {
        return post(user, "/entries", Map.of("id", id(), "item", item, "reply", reply));
    }

    private static Response sign(String user, String stage, String password) {
        String fingerprint = given().auth()
                .preemptive()
                .basic(user, "paced-line-demo")
                .get("/api/v1/orders/" + ORDER + "/gates/" + stage)
                .jsonPath()
                .getString("fingerprint");
        return post(
                user,
                "/gates/" + stage + "/sign-off",
                Map.of("id", id(), "fingerprint", fingerprint, "password", password));
    }

    private static Response move(String direction, String to) {
        return post("fatima", "/moves", Map.of("id", id(), "direction", direction, "to", to, "confirmed", CONFIRMED));
    }

    private static void refused(Response response, int status, String key) {
        response.then().statusCode(status);
        assertThat(response.jsonPath().getList("reasons.key", String.class)).contains(key);
    }

    private static Response send(String user, String path, Map<String, Object> body, int status) {
        Response response = post(user, path, body);
        response.then().statusCode(status);
        return response;
    }

    private static Response post(String user, String path, Map<String, ?> body) {
        return given().auth()
                .preemptive()
                .basic(user, "paced-line-demo")
                .contentType("application/json")
                .body(body)
                .post("/api/v1/orders/" + ORDER + path);
    }

    private static String id() {
        return UUID.randomUUID().toString();
    }
}
