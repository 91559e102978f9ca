package wainbook.page.ledger;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.is;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.house.Cast;

@QuarkusTest
@Tag("database")
class LedgerApiTest {

    private static final String VERIFICATION = "/api/v1/ledger/verification";
    private static final String STREAMS = "/api/v1/ledger/streams/";
    private static final String LEFT = STREAMS + "person/" + Cast.LEFT.number();

    @BeforeEach
    void the_cast_is_there() {
        Cast.assemble();
    }

    @ParameterizedTest
    @EnumSource(names = {"AUDITOR", "QUALITY_ENGINEER", "ADMINISTRATOR"})
    void verifies_for_whoever_checks(Cast person) {
        person.asks()
                .get(VERIFICATION)
                .then()
                .statusCode(200)
                .contentType("application/json")
                .body("sound", is(true))
                .body("streams", greaterThan(10))
                .body("entries", greaterThan(10))
                .body("files", greaterThan(-1))
                .body("findings", empty());
    }

    @ParameterizedTest
    @EnumSource(names = {"TECHNICIAN", "INSPECTOR", "LINE_MANAGER", "HANDOVER_CLERK", "OUTSIDER"})
    void shows_the_stored_record_to_nobody_else(Cast person) {
        person.asks().get(VERIFICATION).then().statusCode(403);
        person.asks().get(LEFT).then().statusCode(403);
    }

    @Test
    void asks_who_it_is_and_lets_nobody_in_who_left() {
        given().get(VERIFICATION).then().statusCode(401);
        given().get(LEFT).then().statusCode(401);
        Cast.LEFT.asks().get(VERIFICATION).then().statusCode(401);
    }

    @Test
    void gives_a_stream_with_its_end() {
        List<String> lines = Cast.AUDITOR
                .asks()
                .get(LEFT)
                .then()
                .statusCode(200)
                .contentType("application/json")
                .body("subject", is("person/" + Cast.LEFT.number()))
                .body("number", is(2))
                .body("at", is("2026-01-05T06:00:00Z"))
                .extract()
                .path("lines");
        Cast.AUDITOR.asks().get(LEFT).then().body("hash", is(sha256(lines.get(1))));
        assertThat(lines.get(1)).contains("\"previous\":\"" + sha256(lines.get(0)) + "\"");
    }

    @Test
    void gives_the_bare_lines_so_that_each_can_be_hashed_by_hand() {
        List<String> lines = Cast.AUDITOR.asks().get(LEFT).then().extract().path("lines");
        String bare = Cast.AUDITOR
                .asks()
                .get(LEFT + "/lines")
                .then()
                .statusCode(200)
                .contentType(containsString("application/x-ndjson"))
                .extract()
                .asString();
        assertThat(bare).isEqualTo(lines.get(0) + "\n" + lines.get(1) + "\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"person/nobody", "people/1001", "work-order/%20", "person/..%2Fworks"})
    void says_what_is_wrong_with_a_stream_that_is_not_there(String written) {
        Cast.AUDITOR
                .asks()
                .urlEncodingEnabled(false)
                .get(STREAMS + written)
                .then()
                .statusCode(404)
                .contentType("application/problem+json")
                .body("status", is(404))
                .body("detail", containsString("A stream is named sort/code"));
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
