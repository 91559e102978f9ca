package wainbook.page.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.engineering.electrical.Bonding;

class CalculationListTest {

    private static final Calculations CALCULATIONS = new Calculations(Calculations.PURE.stream());

    static Stream<Sheet<?, ?>> sheets() {
        return CALCULATIONS.all().stream();
    }

    @Test
    void names_the_calculations_of_the_form() {
        assertThat(sheets().map(Sheet::name))
                .contains(
                        "isolation-voltmeter",
                        "isolation-direct",
                        "isolation-combined",
                        "bonding",
                        "discharge",
                        "y-capacitor-energy",
                        "monitor-test-resistor",
                        "precharge",
                        "tightening",
                        "preload",
                        "tightening-order",
                        "extension",
                        "vin",
                        "check-character",
                        "takt",
                        "serial-line",
                        "forecast-score",
                        "duty-trace",
                        "packs",
                        "axle-loads",
                        "gradeability",
                        "charging-time",
                        "recovery-rate",
                        "carbon");
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void describes_each_with_title_fields_and_sources(Sheet<?, ?> sheet) {
        JsonNode described = sheet.described();

        assertThat(described.path("title").textValue()).isNotBlank();
        assertThat(described.path("sources")).isNotEmpty();
        assertThat(described.path("inputs").path("properties")).isNotEmpty();
        assertThat(described.path("results").path("properties")).isNotEmpty();
        assertThat(described.path("inputs").path("additionalProperties").booleanValue())
                .isFalse();
    }

    @Test
    void says_in_the_schema_what_a_field_may_hold() {
        JsonNode bonding = schema("bonding", "inputs");
        JsonNode direct = schema("isolation-direct", "inputs");
        JsonNode voltmeter = schema("isolation-voltmeter", "inputs").path("properties");

        assertThat(bonding.path("required")).extracting(JsonNode::textValue).containsExactly("currentA", "voltageV");
        assertThat(bonding.path("properties").path("currentA"))
                .hasToString("{\"type\":\"number\",\"exclusiveMinimum\":0.0}");
        assertThat(bonding.path("properties").path("leadOhm"))
                .hasToString("{\"type\":\"number\",\"minimum\":0.0,\"default\":0}");
        assertThat(direct.path("oneOf"))
                .hasToString("[{\"required\":[\"measuredOhm\"]},{\"required\":[\"atLeastOhm\"]}]");
        assertThat(voltmeter.path("insertedRail"))
                .hasToString("{\"type\":\"string\",\"enum\":[\"negative\",\"positive\"]}");
        assertThat(voltmeter.path("limitOhmPerVolt")).hasToString("{\"type\":\"number\",\"enum\":[100.0,500.0]}");
        assertThat(schema("isolation-combined", "inputs").path("properties").path("partsOhm"))
                .hasToString("{\"type\":\"array\",\"items\":{\"type\":\"number\",\"exclusiveMinimum\":0.0},"
                        + "\"minItems\":1,\"maxItems\":10000}");
        assertThat(schema("tightening-order", "inputs").path("properties").path("count"))
                .hasToString("{\"type\":\"integer\",\"minimum\":1.0,\"maximum\":1000.0}");
    }

    @Test
    void says_in_the_schema_which_results_may_be_null() {
        JsonNode vin = schema("vin", "results");

        assertThat(vin.path("properties").path("computedCheck")).hasToString("{\"type\":[\"string\",\"null\"]}");
        assertThat(vin.path("properties").path("hints"))
                .hasToString("{\"type\":\"array\",\"items\":{\"type\":\"string\"}}");
        assertThat(vin.path("required")).extracting(JsonNode::textValue).contains("computedCheck");
    }

    @Test
    void takes_no_two_calculations_of_one_name() {
        assertThatThrownBy(() -> new Calculations(Stream.of(new Bonding(), new Bonding())))
                .hasMessageContaining("bonding");
    }

    private static JsonNode schema(String name, String side) {
        return CALCULATIONS.named(name).orElseThrow().described().path(side);
    }
}
