package wainbook.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static wainbook.process.Sheets.decimal;
import static wainbook.process.Sheets.item;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.ledger.Kinds;
import wainbook.process.determination.Given;
import wainbook.process.determination.Method;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.process.stream.Density;
import wainbook.process.stream.Fate;
import wainbook.process.stream.MaterialStream;

class ProcessShapesTest {

    private static final ObjectMapper JSON = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    static Stream<Ask> asks() {
        var limits = Optional.of(Limits.between(decimal("27.0"), decimal("28.8")));
        return Stream.of(
                new Ask.Confirm(Optional.of("CLIP-M6")),
                new Ask.Measure("voltage", "V", limits, Optional.empty(), Optional.of("meter"), Optional.empty()),
                new Ask.Table(
                        List.of(new Ask.Table.Column("left", "mm", limits, Optional.empty())),
                        List.of("axle 1", "axle 2"),
                        Optional.of("tape")),
                new Ask.Tighten("HV-LUG-M8"),
                new Ask.Recheck("HV-LUG-M8", Optional.empty(), Optional.empty()),
                new Ask.Determine(
                        "insulation resistance",
                        Method.ISOLATION_COMBINED,
                        List.of(
                                new Given("workingV", Optional.of(decimal("756")), Optional.empty()),
                                new Given("limitOhmPerVolt", Optional.of(decimal("500")), Optional.empty())),
                        List.of("pack {packs}", "heater"),
                        Optional.empty(),
                        Optional.of("insulation-tester")),
                new Ask.Serial("PACK", Optional.of("P[0-9]{6}")),
                new Ask.Lot("COOLANT"),
                new Ask.Quantity(
                        "l",
                        Optional.of(decimal("38")),
                        Optional.of(new MaterialStream(
                                Optional.of("coolant"),
                                "16 01 14*",
                                Optional.of(Fate.DISPOSE),
                                Optional.of(new Density(decimal("1.07"), "common practice, no source"))))),
                new Ask.Recount("tools-in", "pieces"),
                new Ask.Choice(List.of(new Ask.Choice.Option("sound", true), new Ask.Choice.Option("cracked", false))),
                new Ask.Attended(List.of(new Ask.Choice.Option("on", true), new Ask.Choice.Option("off again", false))),
                new Ask.Text(Optional.empty(), 200),
                new Ask.Wait(10),
                new Ask.Software("VCU", "4.2.1"),
                new Ask.File(List.of("application/pdf")),
                new Ask.Photograph());
    }

    @ParameterizedTest
    @MethodSource("asks")
    void every_kind_of_item_survives_the_way_into_the_ledger_and_back(Ask ask) throws JsonProcessingException {
        var said = new ProcessSaying.Released(Sheets.sheet(Sheets.asking("a", ask)), 3);

        assertThat(JSON.readValue(JSON.writeValueAsString(said), ProcessSaying.Released.class))
                .isEqualTo(said);
    }

    @Test
    void the_kinds_of_item_are_all_there() {
        assertThat(asks().map(Object::getClass)).containsExactlyInAnyOrder(Ask.class.getPermittedSubclasses());
    }

    @Test
    void an_unknown_field_fails_the_read() throws JsonProcessingException {
        String said = JSON.writeValueAsString(new Ask.Wait(10)).replace("minutes\":10", "minutes\":10,\"hours\":1");

        assertThatExceptionOfType(UnrecognizedPropertyException.class)
                .isThrownBy(() -> JSON.readValue(said, Ask.class));
    }

    @Test
    void the_ledger_takes_every_saying() {
        assertThat(Kinds.of(List.of(ProcessSaying.class)).names())
                .hasSize(ProcessSaying.class.getPermittedSubclasses().length)
                .allSatisfy(name -> assertThat(name).startsWith("process."));
    }

    @Test
    void shapes_that_make_no_sense_cannot_be_made() {
        assertThatIllegalArgumentException().isThrownBy(() -> item("two words"));
        assertThatIllegalArgumentException().isThrownBy(() -> new Ask.Wait(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Ask.File(List.of("pdf")));
        assertThatIllegalArgumentException().isThrownBy(() -> new Ask.Choice(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Joint.Window(decimal("22"), decimal("18")));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Joint.Torque(decimal("30"), new Joint.Window(decimal("18"), decimal("22"))))
                .withMessageContaining("30");
        var leg = new Route.Leg("strip", "STRIP-12M");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Route("R", "Twice", List.of(leg, leg), "bus-12m", "INTAKE"));
    }

    @Test
    void a_route_knows_what_follows() {
        var route = new Route(
                "BUS-12M",
                "12 m bus",
                List.of(new Route.Leg("strip", "S"), new Route.Leg("fitting", "F")),
                "bus-12m",
                "INTAKE-BUS");

        assertThat(route.after("strip")).contains(new Route.Leg("fitting", "F"));
        assertThat(route.after("fitting")).isEmpty();
        assertThat(route.after("paint")).isEmpty();
    }
}
