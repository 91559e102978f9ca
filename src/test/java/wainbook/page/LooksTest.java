package wainbook.page;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;

@QuarkusTest
class LooksTest {

    @Test
    void shows_every_part() {
        given().get("/looks").then().statusCode(200).body(containsString("route-bar"));
    }
}
