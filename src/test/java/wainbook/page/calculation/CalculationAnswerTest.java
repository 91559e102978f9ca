package wainbook.page.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a script sees of a calculation, without the transport. */
class CalculationAnswerTest {

    private final Calculations calculations = new Calculations(Calculations.PURE.stream());

    /** A day at one sample a second, as a script sends it. */
    @Test
    void answers_for_a_whole_day_of_driving() {
        String samples = "36.5,".repeat(86_400) + "0";
        Reply reply = post("duty-trace", """
                {"speedKmh": [%s], "gradient": [%s],
                 "vehicle": {"massKg": 14000, "rotatingFactor": 1.05, "rolling": 0.006, "cdA": 5.6, "airDensity": 1.188,
                  "tractionEfficiency": 0.85, "regenerationShare": 0.8, "regenerationEfficiency": 0.85,
                  "regenerationLowKmh": 5, "regenerationHighKmh": 15, "regenerationLimitW": 200000,
                  "auxiliaryW": 4000, "heatingW": 0, "ptoW": 0},
                 "battery": {"openV": 650, "resistanceOhm": 0.03}}""".formatted(samples, samples.replace("36.5", "0")));

        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.body().path("results").path("stops").intValue()).isEqualTo(1);
        assertThat(reply.body().path("inputs").path("battery").has("roomKwh")).isFalse();
    }

    @Test
    void answers_with_inputs_as_understood_and_the_whole_working() {
        Reply reply = post("bonding", "{\"currentA\": 0.2, \"voltageV\": 0.0146}");

        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.body().toPrettyString()).isEqualToNormalizingNewlines("""
                {
                  "calculation" : "bonding",
                  "inputs" : {
                    "currentA" : 0.2,
                    "voltageV" : 0.0146,
                    "leadOhm" : 0.0,
                    "expandedUncertaintyOhm" : 0.0
                  },
                  "results" : {
                    "resistanceOhm" : 0.073,
                    "limitOhm" : 0.1
                  },
                  "verdict" : "pass",
                  "because" : "The bond has 0.073 Ω with an uncertainty of 0 Ω, which is below the limit of 0.1 Ω.",
                  "decision" : {
                    "verdict" : "pass",
                    "rule" : "Passes if the value plus its expanded uncertainty (k = 2) is below the limit, which itself \
                does not pass; fails if the value less it is not below; undecided between.",
                    "value" : 0.073,
                    "expandedUncertainty" : 0.0,
                    "unit" : "ohm",
                    "upper" : 0.1
                  },
                  "steps" : [ {
                    "name" : "Voltage used",
                    "formula" : "U = |U₊|",
                    "figures" : "|0.0146|",
                    "value" : 0.0146,
                    "unit" : "V"
                  }, {
                    "name" : "Resistance of the bond",
                    "formula" : "R = U / I − R_lead",
                    "figures" : "0.0146 / 0.2 − 0",
                    "value" : 0.073,
                    "unit" : "ohm"
                  } ],
                  "sources" : [ {
                    "document" : "UN R100",
                    "clause" : "5.1.2.2",
                    "standing" : "seen"
                  }, {
                    "document" : "ILAC-G8:09/2019",
                    "clause" : "4.2.2, guard band equal to U",
                    "standing" : "seen"
                  }, {
                    "document" : "common practice, no source",
                    "clause" : "both polarities averaged against thermal voltages",
                    "standing" : "practice"
                  } ],
                  "cautions" : [ "A good result means: within the limits given, with the figures given, by this method. It \
                records and checks; it makes nothing safe.", "Local law, the maker’s instructions and licensed practice come \
                first. Where they are stricter, follow them." ]
                }""");
    }

    @Test
    void names_every_fault_at_once() {
        Reply reply = post(
                "isolation-direct",
                "{\"testV\": \"1000\", \"workingV\": 0, \"limitOhmPerVolt\": NaN, \"accuracyPercent\": 1e999, \"volts\": 1}");

        assertThat(reply.status()).isEqualTo(400);
        assertThat(reply.mediaType()).isEqualTo("application/problem+json");
        assertThat(faults(reply))
                .containsExactlyInAnyOrder(
                        "measuredOhm: Give exactly one of these: measuredOhm, atLeastOhm.",
                        "atLeastOhm: Give exactly one of these: measuredOhm, atLeastOhm.",
                        "testV: A number is expected here, without quotation marks.",
                        "workingV: It must be above 0.",
                        "limitOhmPerVolt: The number is not finite. Give the figure itself.",
                        "accuracyPercent: The number is not finite. Give the figure itself.",
                        "volts: There is no such field here. Check its spelling, or leave it out.");
        assertThat(reply.body().path("detail").textValue())
                .isEqualTo("Nothing was calculated: 7 entries need correcting. Each is named with what it may be.");
    }

    @Test
    void names_every_field_of_an_empty_object_that_has_to_be_given() {
        assertThat(fields(post("isolation-voltmeter", "{}")))
                .containsExactly(
                        "busV",
                        "negativeToChassisV",
                        "positiveToChassisV",
                        "withResistorV",
                        "insertedOhm",
                        "insertedRail",
                        "workingV",
                        "limitOhmPerVolt");
        assertThat(fields(post("isolation-direct", "{}")))
                .containsExactly("testV", "workingV", "limitOhmPerVolt", "measuredOhm", "atLeastOhm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bonding | {\"currentA\": 0, \"voltageV\": 1} | currentA",
                "bonding | {\"currentA\": true, \"voltageV\": null} | currentA, voltageV",
                "bonding | {\"currentA\": 1, \"voltageV\": -Infinity} | voltageV",
                "bonding | {\"currentA\": 1, \"voltageV\": 1, \"leadOhm\": \"0\"} | leadOhm",
                "isolation-combined | {\"partsOhm\": [1, \"2\", 0], \"workingV\": 1, \"limitOhmPerVolt\": 1} "
                        + "| partsOhm[1], partsOhm[2]",
                "isolation-combined | {\"partsOhm\": 5, \"workingV\": 1, \"limitOhmPerVolt\": 1} | partsOhm",
                "isolation-combined | {\"partsOhm\": [], \"workingV\": 1, \"limitOhmPerVolt\": 1} | partsOhm",
                "tightening-order | {\"count\": 4.5} | count",
                "tightening-order | {\"count\": 99999999999} | count",
                "tightening-order | {\"count\": 0} | count",
                "tightening | {\"readingNm\": 1, \"lowerNm\": 3, \"upperNm\": 2, \"x\": 1} | x, upperNm",
                "check-character | {\"scheme\": \"mod11-2\", \"text\": 5} | scheme, text",
                "vin | {} | vin"
            })
    void names_the_field_at_fault(String name, String body, String fields) {
        Reply reply = post(name, body);

        assertThat(reply.status()).isEqualTo(400);
        assertThat(String.join(", ", fields(reply))).isEqualTo(fields);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "[]",
                "5",
                "null",
                "{",
                "{}{}",
                "{\"currentA\": 1, \"currentA\": 1, \"voltageV\": 1}",
                "{'a':1}"
            })
    void says_so_when_the_body_is_not_one_json_object(String body) {
        Reply reply = post("bonding", body);

        assertThat(reply.status()).isEqualTo(400);
        assertThat(fields(reply)).containsExactly("");
    }

    @Test
    void survives_json_that_is_nested_without_end() {
        assertThat(post("bonding", "[".repeat(100_000)).status()).isEqualTo(400);
    }

    @Test
    void puts_field_faults_before_impossible_readings() {
        assertThat(post("bonding", "{\"currentA\": 0.1, \"voltageV\": 1, \"leadOhm\": -1}")
                        .status())
                .isEqualTo(400);
    }

    @Test
    void refuses_impossible_readings_with_a_key_and_what_to_check() {
        Reply reply = post("bonding", "{\"currentA\": 0.198, \"voltageV\": 0.01}");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.mediaType()).isEqualTo("application/problem+json");
        assertThat(reply.body().path("refusal").textValue()).isEqualTo("current-too-low");
        assertThat(reply.body().path("detail").textValue())
                .isEqualTo("The test current was 0.198 A; at least 0.2 A have to flow.");
        assertThat(reply.body().path("check").textValue()).startsWith("Clean the contacts");
    }

    @Test
    void fills_defaults_in_and_takes_null_for_left_out() {
        Reply reply = post(
                "discharge",
                "{\"capacitanceF\": 0.0012, \"resistanceOhm\": 33000, \"startV\": 700, \"limitS\": 120, \"limitV\": null}");

        assertThat(reply.body().path("inputs").path("limitV").doubleValue()).isEqualTo(60);
        assertThat(reply.body().path("verdict").textValue()).isEqualTo("pass");
    }

    @Test
    void leaves_out_what_is_absent_but_writes_null_where_the_form_asks_for_it() {
        Reply voltmeter = post(
                "isolation-voltmeter",
                "{\"busV\": 700, \"negativeToChassisV\": 437.5, \"positiveToChassisV\": 218.75, \"withResistorV\": 157,"
                        + "\"insertedOhm\": 350000, \"insertedRail\": \"negative\", \"workingV\": 700,"
                        + "\"limitOhmPerVolt\": 500}");
        Reply vin = post("vin", "{\"vin\": \"short\"}");

        assertThat(voltmeter.body().path("results").has("parallelOhm")).isFalse();
        assertThat(voltmeter.body().path("inputs").has("meterOhm")).isFalse();
        assertThat(vin.body().path("results").get("computedCheck").isNull()).isTrue();
        assertThat(vin.body().path("results").path("hints").get(0).textValue())
                .isEqualTo("It has 5 characters; a vehicle identification number has 17.");
    }

    @Test
    void names_choices_as_the_form_writes_them() {
        Reply reply = post("check-character", "{\"scheme\": \"MOD37-36\", \"text\": \"A12425GABC1234002\"}");

        assertThat(reply.body().path("inputs").path("scheme").textValue()).isEqualTo("MOD37-36");
        assertThat(reply.body().path("results").path("check").textValue()).isEqualTo("M");
    }

    private Reply post(String name, String body) {
        return Body.read(body, calculations.named(name).orElseThrow()::answer);
    }

    private static List<String> fields(Reply reply) {
        return errors(reply).map(error -> error.path("field").textValue()).toList();
    }

    private static List<String> faults(Reply reply) {
        return errors(reply)
                .map(error -> error.path("field").textValue() + ": "
                        + error.path("message").textValue())
                .toList();
    }

    private static Stream<JsonNode> errors(Reply reply) {
        return StreamSupport.stream(reply.body().path("errors").spliterator(), false);
    }
}
