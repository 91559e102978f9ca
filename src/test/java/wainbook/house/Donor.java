package wainbook.house;

import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A donor bus of a test's own, at its survey, and what the cast asks of it by the API. */
public record Donor(String number) {

    /** Ordered and received; the cast is assembled before. */
    public static Donor received() {
        return received("BUS-12M");
    }

    /** The same on a route of the test's own. */
    public static Donor received(String route) {
        String unique =
                UUID.randomUUID().toString().replace("-", "").substring(0, 8).toUpperCase(java.util.Locale.ROOT);
        var donor = new Donor("DN-" + unique);
        Cast.WORKS_ENGINEER
                .asks()
                .contentType("application/json")
                .body(Map.of(
                        "id",
                        id(),
                        "number",
                        donor.number,
                        "operator",
                        "Vale and Fen Community Buses",
                        "variant",
                        "bus-12m",
                        "route",
                        route,
                        "promisedOn",
                        "2027-02-01",
                        "facts",
                        List.of(Map.of("fact", "packs", "stated", "2"))))
                .post("/api/v1/orders")
                .then()
                .statusCode(201);
        donor.send(
                        Cast.TECHNICIAN,
                        "/donor",
                        Map.of(
                                "id",
                                id(),
                                "vin",
                                "WBK000000" + unique,
                                "registration",
                                "VF12 ABC",
                                "odometerKm",
                                612_000))
                .then()
                .statusCode(201);
        return donor;
    }

    public static String id() {
        return UUID.randomUUID().toString();
    }

    public Response send(Cast person, String path, Map<String, ?> body) {
        return person.asks().contentType("application/json").body(body).post("/api/v1/orders/" + number + path);
    }

    public Response record(Cast person, String item, Map<String, ?> reply) {
        return send(person, "/entries", Map.of("id", id(), "item", item, "reply", reply));
    }
}
