package wainbook.page.calculation;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.notNullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.security.TestSecurity;
import io.restassured.http.ContentType;
import org.junit.jupiter.api.Test;

@QuarkusTest
class CalculationResourceTest {

    private static final String CALCULATIONS = "/api/v1/calculations";

    @Test
    @TestSecurity(user = "p-1", roles = "technician", authMechanism = "basic")
    void lists_what_can_be_calculated() {
        given().get(CALCULATIONS)
                .then()
                .statusCode(200)
                .contentType(ContentType.JSON)
                .body("name", hasItems("bonding", "isolation-voltmeter", "vin", "takt"))
                .body("find { it.name == 'bonding' }.inputs.required", hasItems("currentA", "voltageV"));
    }

    @Test
    @TestSecurity(user = "p-1", roles = "technician", authMechanism = "basic")
    void answers_a_calculation() {
        given().contentType(ContentType.JSON)
                .body("{\"currentA\": 0.2, \"voltageV\": 0.02}")
                .post(CALCULATIONS + "/bonding")
                .then()
                .statusCode(200)
                .contentType(ContentType.JSON)
                .body("verdict", equalTo("fail"));
    }

    @Test
    @TestSecurity(user = "p-1", roles = "technician", authMechanism = "basic")
    void answers_faults_and_impossible_readings_as_problem_details() {
        given().contentType(ContentType.JSON)
                .body("{}")
                .post(CALCULATIONS + "/bonding")
                .then()
                .statusCode(400)
                .contentType("application/problem+json")
                .body("errors.field", hasItems("currentA", "voltageV"));
        given().contentType(ContentType.JSON)
                .body("{\"currentA\": 0.1, \"voltageV\": 0.02}")
                .post(CALCULATIONS + "/bonding")
                .then()
                .statusCode(422)
                .contentType("application/problem+json")
                .body("refusal", equalTo("current-too-low"))
                .body("check", notNullValue());
    }

    @Test
    @TestSecurity(user = "p-1", roles = "technician", authMechanism = "basic")
    void answers_an_empty_body_as_a_fault() {
        given().contentType(ContentType.JSON)
                .post(CALCULATIONS + "/bonding")
                .then()
                .statusCode(400)
                .contentType("application/problem+json");
    }

    @Test
    @TestSecurity(user = "p-1", roles = "technician", authMechanism = "basic")
    void says_that_there_is_no_such_calculation() {
        given().contentType(ContentType.JSON)
                .body("{}")
                .post(CALCULATIONS + "/horoscope")
                .then()
                .statusCode(404)
                .contentType("application/problem+json")
                .body("title", equalTo("No such calculation"));
    }

    @Test
    void asks_for_a_sign_in() {
        given().get(CALCULATIONS).then().statusCode(401);
        given().contentType(ContentType.JSON)
                .body("{}")
                .post(CALCULATIONS + "/bonding")
                .then()
                .statusCode(401);
    }
}
