package wainbook.process.draft;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** One paper of the process as a script writes it: drafted by the works engineer, released by the quality engineer. */
record Paper(String name) {

    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    /** A code that no other test has. */
    static String unique(String beginning) {
        return beginning + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
    }

    /** What is in force, to be changed at will. */
    ObjectNode what() {
        Response answer = Cast.AUDITOR.asks().get(api());
        assertThat(answer.statusCode()).as(name).isEqualTo(200);
        return (ObjectNode) tree(answer.asString()).get("what");
    }

    int revision() {
        return Cast.AUDITOR.asks().get(api()).jsonPath().getInt("revision");
    }

    boolean drafted() {
        return Cast.WORKS_ENGINEER.asks().get(api() + "/draft").statusCode() == 200;
    }

    /** Keeps the draft as it shall stand, on what is in force. */
    Response keep(JsonNode what) {
        return keep(what, inForce() ? revision() : 0);
    }

    Response keep(JsonNode what, int base) {
        ObjectNode body = JSON.createObjectNode();
        body.put("id", UUID.randomUUID().toString()).put("base", base).put("seen", drafted() ? seen() : 0);
        body.set("draft", what);
        return Cast.WORKS_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(body.toString())
                .put(api() + "/draft");
    }

    /** The rules that keep the draft from release, each as its key and what it is about. */
    List<String> faults(JsonNode what) {
        keep(what).then().statusCode(201);
        return faults();
    }

    List<String> faults() {
        JsonNode kept = tree(Cast.WORKS_ENGINEER.asks().get(api() + "/draft").asString());
        return kept.get("faults").findValuesAsText("key");
    }

    Response propose() {
        return act(Cast.WORKS_ENGINEER, "proposal", Map.of("id", UUID.randomUUID(), "seen", seen()));
    }

    Response release(Cast who) {
        return act(who, "release", Map.of("id", UUID.randomUUID(), "seen", seen(), "password", Cast.PASSWORD));
    }

    /** The whole way. */
    void released(JsonNode what) {
        keep(what).then().statusCode(201);
        propose().then().statusCode(201);
        release(Cast.QUALITY_ENGINEER).then().statusCode(201);
    }

    /** Leaves nothing in hand, and in force what was there before. */
    void restored(JsonNode before) {
        if (drafted()) {
            act(Cast.WORKS_ENGINEER, "discard", Map.of("id", UUID.randomUUID(), "seen", seen()));
        }
        if (!what().equals(before)) {
            released(before);
        }
    }

    String page() {
        return Browsing.as(Cast.WORKS_ENGINEER).page("/process/" + name + "/draft");
    }

    String pageOfTheSecond() {
        return Browsing.as(Cast.QUALITY_ENGINEER).page("/process/" + name + "/draft");
    }

    static ObjectNode part(JsonNode list, String field, String value) {
        for (JsonNode part : list) {
            if (part.path(field).asText().equals(value)) {
                return (ObjectNode) part;
            }
        }
        throw new AssertionError("no " + field + " " + value + " in " + list);
    }

    static void takeOut(JsonNode list, String field, String value) {
        ArrayNode parts = (ArrayNode) list;
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).path(field).asText().equals(value)) {
                parts.remove(i);
                return;
            }
        }
        throw new AssertionError("no " + field + " " + value + " in " + list);
    }

    static JsonNode tree(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException unreadable) {
            throw new AssertionError(json, unreadable);
        }
    }

    static List<String> keys(Response refused) {
        assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(409);
        return refused.jsonPath().getList("reasons.key");
    }

    private boolean inForce() {
        return Cast.AUDITOR.asks().get(api()).statusCode() == 200;
    }

    private long seen() {
        return Cast.WORKS_ENGINEER.asks().get(api() + "/draft").jsonPath().getLong("seen");
    }

    private Response act(Cast who, String act, Map<String, ?> body) {
        return who.asks().contentType(ContentType.JSON).body(body).post(api() + "/draft/" + act);
    }

    private String api() {
        return "/api/v1/process/" + name;
    }
}
