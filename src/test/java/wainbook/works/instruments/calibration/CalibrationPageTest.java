package wainbook.works.instruments.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** A wrench of the test's own is calibrated with its points, by the form. */
@QuarkusTest
@Tag("database")
class CalibrationPageTest {

    private final String today = LocalDate.now(ZoneOffset.UTC).toString();
    private String wrench;
    private Browsing engineer;

    @BeforeEach
    void a_wrench() {
        Cast.assemble();
        wrench = "TW-" + UUID.randomUUID().toString().substring(0, 8);
        engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/instruments/new");
        form.putAll(Map.of(
                "code",
                wrench,
                "kind",
                "torque-setting",
                "title",
                "Wrench",
                "unit",
                "N·m",
                "lower",
                "40",
                "upper",
                "200"));
        form.put("accuracyPercent", "3");
        engineer.send("/instruments/new", form);
    }

    @Test
    void points_off_the_certificate_make_its_uncertainty() {
        Map<String, Object> form = filled("C-1");
        form.putAll(Map.of("permitted", "4", "found1Target", "40", "found1Error", "1.78", "found1W", "0.74"));
        form.putAll(Map.of("found2Target", "200", "found2Error", "-2.35", "found2W", "0.64"));
        assertThat(send(form).statusCode()).isEqualTo(303);
        assertThat(engineer.page("/instruments/" + wrench))
                .contains(
                        ": usable",
                        "40: +1.78 % ± 0.74 %",
                        "200: −2.35 % ± 0.64 %",
                        "within what is permitted",
                        "2.99");
    }

    @Test
    void readings_of_the_reference_are_worked_out() {
        Map<String, Object> form = filled("C-1");
        form.putAll(Map.of(
                "permitted",
                "4",
                "found1Target",
                "120",
                "found1Readings",
                "117.1 117.6 117.3 117.9 117.4",
                "referenceW",
                "0.5",
                "step",
                "0.1"));
        assertThat(send(form).statusCode()).isEqualTo(303);
        assertThat(engineer.page("/instruments/" + wrench)).contains("120: +2.162989 %");
    }

    @Test
    void what_cannot_be_read_comes_back_at_its_cell_with_all_that_was_typed() {
        Map<String, Object> form = filled("C-1");
        form.putAll(Map.of("permitted", "4", "found1Target", "40", "found1Error", "much", "found1W", "0.74"));
        form.putAll(Map.of("found3Target", "120", "found3Readings", "117.1"));
        Response back = send(form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString())
                .contains("id=\"found1Error-fault\"", "value=\"much\"", "id=\"found3Error-fault\"", "value=\"117.1\"");
        assertThat(engineer.page("/instruments/" + wrench)).contains("never calibrated");
    }

    @Test
    void one_found_and_left_outside_is_withdrawn_by_its_calibration() {
        Map<String, Object> form = filled("C-1");
        form.putAll(Map.of("permitted", "4", "found1Target", "40", "found1Error", "6", "found1W", "0.7"));
        assertThat(send(form).asString()).contains("It cannot go into use");
        form.put("adjustment", "WITHDRAWN");
        assertThat(send(form).statusCode()).isEqualTo(303);
        assertThat(engineer.page("/instruments/" + wrench)).contains(": withdrawn", "outside what is permitted");
    }

    @Test
    void an_old_certificate_put_on_record_late_changes_nothing_now() {
        send(filled("C-2"));
        Map<String, Object> old = filled("C-1");
        old.putAll(Map.of("on", "2020-01-05", "due", "2021-01-05"));
        assertThat(send(old).statusCode()).isEqualTo(303);
        assertThat(engineer.page("/instruments/" + wrench)).contains(": usable", "C-1", "C-2");
        assertThat(engineer.page("/instruments?search=" + wrench)).contains("usable");
    }

    private Map<String, Object> filled(String certificate) {
        Map<String, Object> form = engineer.form("/instruments/" + wrench + "/calibrations/new");
        form.putAll(Map.of("on", today, "due", "2036-01-05", "certificate", certificate));
        return form;
    }

    private Response send(Map<String, Object> form) {
        return engineer.send("/instruments/" + wrench + "/calibrations", form);
    }
}
