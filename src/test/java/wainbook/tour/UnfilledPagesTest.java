package wainbook.tour;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.setup.start.StartCode;

/** A works on its first day: every list says that it is empty and what to do, and can be read by everybody. */
@QuarkusTest
@TestProfile(UnfilledWorks.class)
class UnfilledPagesTest {

    private static final String PASSWORD = "quay-side-morning-7";

    private static final List<String> LISTS = List.of(
            "/line", "/orders", "/gates", "/isolation", "/locks", "/handover", "/matters", "/process", "/instruments");

    private static final List<String> OTHERS = List.of("/trace", "/people", "/people/competences", "/setup/works");

    @Inject
    StartCode code;

    @TestHTTPResource
    URL base;

    @Test
    void every_list_says_that_it_is_empty_and_what_to_do() {
        try (var eyes = new Eyes(base.toString(), PASSWORD)) {
            eyes.look(Eyes.STRANGER, "/first-start", Size.wanted());
            begin();
            for (String list : LISTS) {
                eyes.look("boss", list, Size.wanted());
                assertThat(eyes.as("boss").locator("main .empty .what").count())
                        .as(list)
                        .isPositive();
            }
            OTHERS.forEach(page -> eyes.look("boss", page, Size.wanted()));
            assertThat(eyes.wrong()).isEmpty();
        }
    }

    private void begin() {
        Browsing stranger = Browsing.asStranger();
        Map<String, Object> form = stranger.form("/first-start");
        form.putAll(Map.of(
                "code", code.code(),
                "title", "Quay works",
                "zone", "Europe/London",
                "number", "W-0001",
                "user", "boss",
                "name", "Bo Ossington",
                "password", PASSWORD,
                "again", PASSWORD));
        assertThat(stranger.send("/first-start", form).statusCode()).isEqualTo(303);
    }
}
