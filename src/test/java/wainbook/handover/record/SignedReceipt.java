package wainbook.handover.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import wainbook.house.Cast;

/** The receipt of a vehicle whose record is whole, signed by a typed name: the last that a test needs before it hands over. */
public final class SignedReceipt {

    private SignedReceipt() {}

    public static void of(String order) {
        Response response = send(order, "/receipts", signing(order));
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(201);
    }

    static Map<String, Object> signing(String order) {
        return new HashMap<>(Map.of(
                "id",
                UUID.randomUUID(),
                "content",
                content(order),
                "name",
                "Robin Invented",
                "role",
                "Depot foreman",
                "firm",
                "Vale and Fen",
                "manner",
                "TYPED",
                "confirmed",
                true));
    }

    static String content(String order) {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + order + "/handover-record")
                .jsonPath()
                .getString("content");
    }

    static Response send(String order, String path, Map<String, Object> body) {
        return Cast.HANDOVER_CLERK
                .asks()
                .contentType("application/json")
                .body(body)
                .post("/api/v1/orders/" + order + "/handover-record" + path);
    }
}
