package wainbook.page.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.ledger.verification.Finding;
import wainbook.ledger.verification.VerificationReport;
import wainbook.ledger.verification.Verify;
import wainbook.page.Words;

/** Whoever checks the record presses one button and reads what was found. */
@QuarkusTest
class VerificationPageTest {

    private static final String PAGE = "/verification";

    @BeforeEach
    void the_cast_is_there() {
        Cast.assemble();
    }

    @Test
    void says_how_much_there_is_and_verifies_at_the_press_of_a_button() {
        var auditor = Browsing.as(Cast.AUDITOR);
        assertThat(auditor.page(PAGE))
                .containsPattern("There are \\d+ streams with [\\d,]+ entries")
                .doesNotContain("Report");
        String report = auditor.send(PAGE, auditor.form(PAGE)).asString();
        assertThat(report)
                .contains("<strong>Sound</strong>", "Entries read", "as it was written")
                .doesNotContain("Findings");
    }

    @Test
    void only_who_may_check_is_shown_the_way() {
        assertThat(Browsing.as(Cast.AUDITOR).page("/trace")).contains("href=\"/verification\"");
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/trace")).doesNotContain("href=\"/verification\"");
    }

    @Test
    void a_form_of_another_site_verifies_nothing() {
        assertThat(Browsing.as(Cast.AUDITOR)
                        .send(PAGE, Map.of("csrf-token", "guessed"))
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void a_finding_stands_with_its_place_and_the_way_it_is_wrong() {
        var finding = new Finding("work-order/WB-1 entry 3", Finding.What.OTHER_NUMBER, List.of("4"));
        var report = new VerificationReport(2, 7, 1, List.of(finding));
        var done = VerificationView.Done.of(report, Cast.ENGAGED_AT, java.time.Duration.ofMillis(1250));
        String page = VerificationPage.Templates.verification(
                        new VerificationView(new Verify.Extent(2, 7, 1), Optional.of(done)))
                .render();
        assertThat(page)
                .contains("Not as written", "<code>work-order/WB-1 entry 3</code>", "It says that it is number 4.")
                .doesNotContain("<strong>Sound</strong>");
    }

    @Test
    void every_way_to_be_wrong_has_words() {
        assertThat(Arrays.stream(Finding.What.values()).map(what -> "ledger.found." + what))
                .allSatisfy(key -> assertThat(Words.find(key)).as(key).isPresent());
    }
}
