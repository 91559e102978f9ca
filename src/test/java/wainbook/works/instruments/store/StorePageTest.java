package wainbook.works.instruments.store;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** A gauge of the test's own goes out of the store and comes back. */
@QuarkusTest
@Tag("database")
class StorePageTest {

    private final String gauge = "GA-" + UUID.randomUUID().toString().substring(0, 8);
    private Browsing technician;

    @BeforeEach
    void a_gauge() {
        Cast.assemble();
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/instruments/new");
        form.putAll(Map.of(
                "code", gauge, "kind", "gap-gauge", "title", "Gap gauge", "unit", "mm", "lower", "0", "upper", "5"));
        form.put("accuracyPercent", "");
        engineer.send("/instruments/new", form);
        Map<String, Object> calibration = engineer.form("/instruments/" + gauge + "/calibrations/new");
        calibration.putAll(Map.of("on", "2026-01-05", "due", "2036-01-05", "certificate", "C-1"));
        engineer.send("/instruments/" + gauge + "/calibrations", calibration);
        technician = Browsing.as(Cast.TECHNICIAN);
    }

    @Test
    void it_is_out_with_one_person_until_it_comes_back() {
        assertThat(giveTo(Cast.TECHNICIAN.number()).statusCode()).isEqualTo(303);
        assertThat(technician.page("/tool-store")).contains("/instruments/" + gauge, "S-3");
        assertThat(technician.page("/tool-store/out.csv")).contains(gauge);
        assertThat(technician.page("/instruments/" + gauge)).contains("Out of the store, with");
        assertThat(giveTo(Cast.INSPECTOR.number()).asString()).contains("id=\"code-fault\"", "is out already");
        assertThat(takeBack(false, "").statusCode()).isEqualTo(303);
        assertThat(technician.page("/tool-store")).doesNotContain("/instruments/" + gauge);
        assertThat(takeBack(false, "").asString()).contains("id=\"back-fault\"", "There is nothing to take back");
    }

    @Test
    void what_comes_back_damaged_is_withdrawn_and_not_given_out_again() {
        giveTo(Cast.TECHNICIAN.number());
        assertThat(takeBack(true, "").asString()).contains("id=\"remark-fault\"");
        assertThat(takeBack(true, "Jaw bent").statusCode()).isEqualTo(303);
        assertThat(technician.page("/instruments/" + gauge)).contains(": withdrawn", "Jaw bent");
        assertThat(giveTo(Cast.TECHNICIAN.number()).asString())
                .contains("id=\"code-fault\"", "It was withdrawn: Jaw bent");
    }

    @Test
    void damage_is_taken_in_from_whoever_finds_it() {
        assertThat(takeBack(true, "Found under a bench").statusCode()).isEqualTo(303);
        assertThat(technician.page("/instruments/" + gauge)).contains(": withdrawn");
    }

    @Test
    void nothing_goes_to_nobody() {
        assertThat(giveTo("W-9999").asString()).contains("id=\"to-fault\"");
    }

    private Response giveTo(String person) {
        Map<String, Object> form = technician.form("/tool-store");
        form.putAll(Map.of("code", gauge, "to", person, "place", "S-3"));
        return technician.send("/tool-store/issues", form);
    }

    private Response takeBack(boolean unsound, String remark) {
        Map<String, Object> form = technician.form("/tool-store");
        form.put("id", UUID.randomUUID().toString());
        form.putAll(Map.of("back", gauge, "unsound", unsound ? "yes" : "", "remark", remark));
        return technician.send("/tool-store/returns", form);
    }
}
