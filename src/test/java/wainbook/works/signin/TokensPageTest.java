package wainbook.works.signin;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** A person makes tokens for scripts, reads each once, and takes each back on its own. */
@QuarkusTest
@Tag("database")
class TokensPageTest {

    private static final String PAGE = "/tokens";
    private static final Pattern TOKEN = Pattern.compile("wainbook-[A-Za-z0-9_-]{32}");
    private static final Pattern WITHDRAWAL = Pattern.compile("/tokens/[0-9a-f]{64}/withdrawal");

    @BeforeEach
    void the_cast_is_there() {
        Cast.assemble();
    }

    @Test
    void a_token_is_shown_once_and_asks_in_ones_name_until_it_is_withdrawn() {
        var clerk = Browsing.as(Cast.HANDOVER_CLERK);
        Response made = make(clerk, "label printer");
        assertThat(made.statusCode()).isEqualTo(200);
        assertThat(made.header("Cache-Control")).isEqualTo("no-store");
        String token = found(TOKEN, made.asString());
        assertThat(made.asString()).contains("<code>handover-clerk</code>", "only time it can be read");
        assertThat(asked("handover-clerk", token)).isEqualTo(200);
        assertThat(asked("auditor", token)).as("somebody else's name").isEqualTo(401);

        String page = clerk.page(PAGE);
        assertThat(page).contains("label printer").doesNotContain(token);
        clerk.send(found(WITHDRAWAL, page), clerk.form(PAGE));
        assertThat(asked("handover-clerk", token)).isEqualTo(401);
        assertThat(clerk.page(PAGE)).doesNotContain("label printer");
    }

    @Test
    void nobody_sees_or_withdraws_the_token_of_another() {
        var owner = Browsing.as(Cast.ADMINISTRATOR);
        String token = found(TOKEN, make(owner, "nightly copy").asString());
        String withdrawal = found(WITHDRAWAL, owner.page(PAGE));
        var other = Browsing.as(Cast.OUTSIDER);
        assertThat(other.page(PAGE)).doesNotContain("nightly copy");
        other.send(withdrawal, other.form(PAGE));
        assertThat(asked("administrator", token)).isEqualTo(200);
        owner.send(withdrawal, owner.form(PAGE));
        assertThat(asked("administrator", token)).isEqualTo(401);
    }

    @Test
    void a_token_says_what_it_is_for() {
        var person = Browsing.as(Cast.TEAM_LEADER);
        Response answer = make(person, " ");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString()).contains("id=\"title-fault\"").doesNotContainPattern(TOKEN);
        assertThat(make(person, "x".repeat(81)).statusCode()).isEqualTo(422);
        assertThat(person.page(PAGE)).contains("You have no tokens.");
    }

    private static Response make(Browsing person, String title) {
        Map<String, Object> form = person.form(PAGE);
        form.put("title", title);
        return person.send(PAGE, form);
    }

    private static int asked(String user, String token) {
        return RestAssured.given()
                .auth()
                .preemptive()
                .basic(user, token)
                .get("/api/v1/orders")
                .statusCode();
    }

    private static String found(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertThat(matcher.find()).as(pattern.pattern()).isTrue();
        return matcher.group();
    }
}
