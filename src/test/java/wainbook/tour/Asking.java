package wainbook.tour;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import wainbook.setup.DemoWorks;

/** Somebody of the demo works, at the API. */
record Asking(String user) {

    JsonPath get(String path) {
        return signedIn().get("/api/v1" + path).then().statusCode(200).extract().jsonPath();
    }

    /** Does something for the first time. */
    void does(String path, Map<String, ?> what) {
        Response answer =
                signedIn().contentType(ContentType.JSON).body(withId(what)).post("/api/v1" + path);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(201);
    }

    void keeps(String path, Map<String, ?> what) {
        signedIn()
                .contentType(ContentType.JSON)
                .body(withId(what))
                .put("/api/v1" + path)
                .then()
                .statusCode(201);
    }

    /** The fingerprint of a picture of the rehearsal that was handed in. */
    String handsIn(String path, String picture) {
        try (var bytes = Asking.class.getResourceAsStream(picture)) {
            return signedIn()
                    .contentType("image/png")
                    .body(bytes.readAllBytes())
                    .post("/api/v1" + path)
                    .then()
                    .statusCode(200)
                    .extract()
                    .path("sha256");
        } catch (java.io.IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    /** The first item of a vehicle’s sheet that is not settled. */
    String firstOpen(String order) {
        return get("/orders/" + order + "/sheet")
                .getString("items.find { it.status == 'OPEN' || it.status == 'FAILED' || it.status == 'STALE' }.item");
    }

    private static Map<String, Object> withId(Map<String, ?> what) {
        Map<String, Object> body = new LinkedHashMap<>(what);
        body.put("id", UUID.randomUUID());
        return body;
    }

    private RequestSpecification signedIn() {
        return RestAssured.given().auth().preemptive().basic(user, DemoWorks.PASSWORD);
    }
}
