package wainbook.page.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.engineering.Calculation;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** A person at the pages of calculations reads what a script gets. */
@QuarkusTest
class CalculationPageTest {

    private Browsing inspector;

    static Stream<String> calculations() {
        return Calculations.PURE.stream().map(Calculation::name);
    }

    @BeforeAll
    static void everybodyIsThere() {
        Cast.assemble();
    }

    @BeforeEach
    void signIn() {
        inspector = Browsing.as(Cast.INSPECTOR);
    }

    @Test
    void the_list_names_every_calculation_with_what_it_is_for() {
        String page = inspector.page("/calculations");
        assertThat(calculations()).allSatisfy(name -> assertThat(page).contains("/calculations/" + name + "\""));
        assertThat(page).contains("High voltage", "Takt", "UN R100, 5.1.2.2 (read in a public copy)");
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void before_a_figure_is_given_the_page_shows_what_is_asked_and_nothing_is_wrong(String name) {
        String page = inspector.page("/calculations/" + name);
        assertThat(page)
                .contains("What is asked", "Sources")
                .doesNotContain("class=\"fault\"", "<h2 id=\"answer\">Result<");
    }

    @Test
    void a_result_has_an_address_that_shows_it_again() {
        String page = inspector.page("/calculations/bonding?currentA=0.2&voltageV=0.0146");
        assertThat(page)
                .contains("<strong>Pass</strong>", "value=\"0.0146\"", "0.073", "R = ")
                .contains("Upper limit", "UN R100, 5.1.2.2", "it makes nothing safe");
    }

    @Test
    void a_figure_that_is_given_in_several_takes_all_of_them() {
        String address = "/calculations/isolation-combined?workingV=700&limitOhmPerVolt=500";
        assertThat(inspector.page(address + "&partsOhm=4000000&partsOhm=4000000"))
                .contains(">4000000 4000000<", "2000000");
    }

    @Test
    void what_was_left_out_is_shown_as_it_was_understood() {
        assertThat(inspector.page("/calculations/takt?availableMinutes=470&demand=5"))
                .containsPattern("name=\"efficiency\" type=\"text\" value=\"1\"")
                .contains("94");
    }

    @Test
    void a_value_at_a_strict_limit_fails_on_the_page_as_it_does_for_a_script() {
        assertThat(inspector.page("/calculations/bonding?currentA=0.2&voltageV=0.02"))
                .contains("<strong>Fail</strong>", "is not below the limit of 0.1 Ω");
    }

    @Test
    void what_the_uncertainty_does_not_decide_is_no_pass() {
        assertThat(inspector.page("/calculations/bonding?currentA=0.2&voltageV=0.0198&expandedUncertaintyOhm=0.005"))
                .contains("Undecided: it does not count as a pass")
                .doesNotContain("<strong>Pass</strong>");
    }

    @Test
    void what_is_wrong_is_said_at_its_field_and_what_was_typed_stays() {
        Response answer = inspector.get("/calculations/bonding?currentA=two&leadOhm=-1");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString())
                .contains("id=\"currentA-fault\"", "id=\"voltageV-fault\"", "id=\"leadOhm-fault\"", "value=\"two\"")
                .contains("digits, with a point");
    }

    @Test
    void readings_that_cannot_be_true_are_refused_with_what_to_check() {
        Response answer = inspector.get("/calculations/bonding?currentA=0.1&voltageV=0.02");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString()).contains("Nothing was worked out", "Clean the contacts");
    }

    @Test
    void several_values_may_stand_in_lines_or_between_commas_and_a_wrong_one_is_named_by_its_place() {
        assertThat(inspector.page("/calculations/isolation-combined"
                        + "?partsOhm=2000000\n3000000,6000000&workingV=800&limitOhmPerVolt=500"))
                .contains("<strong>Pass</strong>", "1000000");
        assertThat(inspector
                        .get("/calculations/isolation-combined?partsOhm=5,x&workingV=800&limitOhmPerVolt=500")
                        .asString())
                .contains("Insulation resistance of each part, no. 2: ");
    }

    @Test
    void things_with_parts_are_typed_in_rows_and_answered_in_a_table() {
        String page = inspector.page("/calculations/containment?foundAt=40;2.9\n120;5\n200;6.1"
                + "&goodAt=40\t0.8\n120\t1\n200\t1.2&windowDays=35&uncertaintyPercent=0.5"
                + "&readings=P-11;31;108.2;108;132\nP-8;21;119.6;108;132");
        assertThat(page)
                .contains("2 readings: 1 surely outside the limits, 0 possibly, 1 safe.")
                .contains("<caption>Readings</caption>", "<th scope=\"col\">at best</th>", "<td>P-11</td>")
                .contains("<td>surely outside</td>", "one a line, with semicolons between: ")
                .contains("40;2.9");
        assertThat(inspector.page("/calculations/gauge-study?measurements=1 2;1.1 2.1\n3 4;3.2 4.1"))
                .contains("kinds of part apart");
        assertThat(inspector.page("/calculations/gauge-study?measurements=[[[1,2],[1.1,2.1]],[[3,4],[3.2,4.1]]]"))
                .contains("kinds of part apart");
    }

    @Test
    void what_is_wrong_in_a_row_is_said_with_its_place() {
        String page = inspector
                .get("/calculations/calibration?points=40;39.2 39.5\n120;117 x;5\n200"
                        + "&permittedPercent=4&referenceW=0.5&stepNm=0.1")
                .asString();
        assertThat(page)
                .contains("Points, no. 2.referenceNm[1]: A number is expected here")
                .contains("Points, no. 2.3: There is no such field here")
                .contains("Points, no. 3.referenceNm: This is not filled in");
    }

    @Test
    void a_field_that_is_none_is_said_and_not_passed_over() {
        Response answer = inspector.get("/calculations/extension?wantedNm=100&leverMm=500&extensionMm=100&extnesion=1");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString()).contains("There is no field called “extnesion” here");
    }

    @Test
    void what_was_typed_never_becomes_markup() {
        assertThat(inspector.get("/calculations/vin?vin=<b>").asString())
                .contains("&lt;b&gt;")
                .doesNotContain("<b>");
    }

    @Test
    void a_calculation_that_is_none_is_not_found() {
        assertThat(inspector.get("/calculations/perpetual-motion").statusCode()).isEqualTo(404);
    }
}
