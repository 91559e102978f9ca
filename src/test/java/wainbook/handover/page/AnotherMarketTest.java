package wainbook.handover.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.handover.FinishedVehicle;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** The same vehicle by another market's rules: the page, its file and its twin for scripts. */
@QuarkusTest
class AnotherMarketTest {

    private String number;
    private String page;

    @BeforeEach
    void a_finished_bus_for_great_britain_stands_in_the_yard() {
        Cast.assemble();
        number = "AM-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        page = "/handover/" + number;
        FinishedVehicle.build(number, FinishedVehicle.plainFacts());
    }

    private JsonPath known(String query) {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + number + "/documents" + query)
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    @Test
    void the_page_says_that_it_is_a_question_and_what_would_be_different() {
        assertThat(Browsing.as(Cast.AUDITOR).page(page + "?set=DE"))
                .contains(number + ", if it were for Germany", "Judged by the rules DE, revision 3")
                .contains("This is only a question, and nothing is written.")
                .contains(number + " is for Great Britain, and is handed over by the rules GB.")
                .contains("This is no legal advice", "from memory, look it up")
                .contains("Needed in addition (", "Becomes a question (", "Falls away (")
                .contains(
                        "Expert report for a new operating permit", "StVZO, § 19(2), 21; text read; in place of EU-01")
                .contains("GB: no such rule; DE: needed", "GB: needed; DE: no such rule")
                .contains("Notice of alteration of a public service vehicle", "Any pack new, not used before")
                .doesNotContain("name=\"receivedBy\"", "/documents/DE-17\"", "National individual approval");
    }

    @Test
    void what_holds_in_every_market_neither_comes_nor_goes() {
        var compared = known("?set=DE");
        for (String change : new String[] {"inAddition", "becomesQuestion", "fallsAway"}) {
            assertThat(compared.getList("difference." + change, String.class))
                    .isNotEmpty()
                    .doesNotContain("GB-15", "GB-27", "GB-28", "GB-31");
        }
        assertThat(compared.getString("documents.find { it.id == 'GB-28' }.answer"))
                .isEqualTo("needed");
    }

    @Test
    void the_union_puts_the_law_of_the_state_first() {
        String local = "The state where the vehicle is registered has law of its own besides";
        assertThat(Browsing.as(Cast.AUDITOR).page(page + "?set=EU"))
                .contains(number + ", if it were for the European Union", local);
        assertThat(Browsing.as(Cast.AUDITOR).page(page + "?set=DE")).doesNotContain(local);
        assertThat(Browsing.as(Cast.AUDITOR).page(page)).doesNotContain(local);
    }

    @Test
    void to_ask_writes_nothing() {
        var before = known("");
        Browsing.as(Cast.HANDOVER_CLERK).page(page + "?set=DE");
        var after = known("");
        assertThat(after.getLong("seen")).isEqualTo(before.getLong("seen"));
        assertThat(after.getString("set")).isEqualTo("GB");
        assertThat(after.<Object>get("difference")).isNull();
    }

    @Test
    void scripts_get_the_same_by_the_same_word() {
        var compared = known("?set=DE");
        assertThat(compared.getString("set")).isEqualTo("DE");
        assertThat(compared.getString("difference.ownSet")).isEqualTo("GB");
        assertThat(compared.getList("difference.inAddition", String.class))
                .contains("DE-17", "DE-18", "DE-19", "EU-03", "EU-14", "EU-21", "EU-23")
                .doesNotContain("DE-20", "EU-15");
        assertThat(compared.getList("difference.becomesQuestion", String.class)).contains("EU-02", "EU-06", "EU-11");
        assertThat(compared.getList("difference.fallsAway", String.class))
                .contains("GB-01", "GB-10", "GB-40")
                .doesNotContain("GB-05");
        assertThat(compared.getList("against.key", String.class))
                .as("by its own rules")
                .isEqualTo(known("").getList("against.key", String.class));
    }

    @Test
    void the_file_holds_what_the_page_shows() {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        assertThat(clerk.page(page + "?set=DE")).contains(page + "/documents.csv?set=DE");
        assertThat(clerk.page(page + "/documents.csv?set=DE"))
                .startsWith("set,id,document,change,answer,standing,why")
                .containsPattern("DE,DE-17,\"Expert report[^\n]*\",\"in addition\",needed,needed,")
                .containsPattern("DE,EU-06,[^\n]*\"becomes a question\",ask,question,")
                .containsPattern("GB,GB-10,[^\n]*\"falls away\",needed,needed,")
                .containsPattern("DE,GB-28,\"High-voltage commissioning record\",,needed,needed,");
        assertThat(clerk.page(page)).contains(page + "/documents.csv\"");
        assertThat(clerk.page(page + "/documents.csv"))
                .containsPattern("GB,GB-10,[^\n]*,,needed,needed,")
                .doesNotContain("DE-17");
    }

    @ParameterizedTest
    @ValueSource(strings = {"FR", "de", "../GB"})
    void a_set_that_is_not_here_is_a_fault_at_its_field(String set) {
        Response refused = Browsing.as(Cast.HANDOVER_CLERK).get(page + "?set=" + set);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.asString())
                .contains("set-fault", "There is no set of rules called “" + set + "” here")
                .contains("Choose one of these: GB, EU, DE.", "Missing before handover (");
        assertThat(Browsing.as(Cast.HANDOVER_CLERK)
                        .get(page + "/documents.csv?set=" + set)
                        .statusCode())
                .isEqualTo(422);
        Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + number + "/documents?set=" + set)
                .then()
                .statusCode(422);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "?set=", "?set=GB"})
    void its_own_set_is_its_own_page(String query) {
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page(page + query))
                .contains("Documents of " + number, "For another market", "value=\"EU\"", "value=\"DE\"")
                .doesNotContain("value=\"GB\"", number + ", if it were for");
    }

    @Test
    void a_vehicle_whose_market_has_no_rules_is_shown_without_a_comparison() {
        String other = number + "F";
        Map<String, String> facts = FinishedVehicle.plainFacts();
        facts.put("market", "FR");
        FinishedVehicle.build(other, facts);
        assertThat(Browsing.as(Cast.AUDITOR).page("/handover/" + other + "?set=DE"))
                .contains("Its own market has no rules here", "Needed (", "is for FR")
                .doesNotContain("Needed in addition");
    }

    @Test
    void a_vehicle_for_germany_is_handed_over_by_its_rules() {
        String other = number + "D";
        Map<String, String> facts = FinishedVehicle.plainFacts();
        facts.put("market", "DE");
        FinishedVehicle.build(other, facts);
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page("/handover/" + other))
                .contains("Judged by the rules DE, revision 3", "/documents/DE-17", "/documents/GB-28")
                .contains("/orders/" + other + "/facts?fact=new_base_vehicle")
                .doesNotContain("/documents/GB-01", "/documents/EU-01");
    }

    @Test
    void nobody_asks_who_is_not_signed_in() {
        assertThat(Browsing.asStranger().get(page + "?set=DE").asString()).doesNotContain("Expert report");
    }
}
