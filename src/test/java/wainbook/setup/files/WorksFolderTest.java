package wainbook.setup.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.page.Words;
import wainbook.predicate.Predicates;
import wainbook.process.VehicleFacts;

class WorksFolderTest {

    private static final Predicates PREDICATES = VehicleFacts.PREDICATES;
    private static final Path DEMO = Path.of("src/test/resources/small-works");

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheDemonstrationWorks() throws IOException {
        try (Stream<Path> files = Files.walk(DEMO)) {
            for (Path file : files.toList()) {
                Path copy = folder.resolve(DEMO.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        }
    }

    private List<String> faults() {
        return WorksFolder.read(folder, PREDICATES)
                .fold(
                        files -> List.of(),
                        faults -> faults.stream()
                                .peek(fault -> assertThat(text(fault)).isNotBlank())
                                .map(Fault::toString)
                                .toList());
    }

    private static String text(Fault fault) {
        return Words.of(fault.reason().key(), fault.reason().arguments().toArray());
    }

    private void replace(String file, String old, String planted) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(old);
        Files.writeString(folder.resolve(file), text.replaceFirst(Pattern.quote(old), planted));
    }

    @Test
    void the_demonstration_works_has_no_fault() {
        assertThat(faults()).isEmpty();
    }

    @Test
    void the_class_path_holds_the_same_works_as_the_folder() {
        assertThat(WorksFolder.onClassPath("small-works", PREDICATES))
                .isEqualTo(WorksFolder.read(DEMO, PREDICATES))
                .isInstanceOf(Found.Whole.class);
    }

    @Test
    void a_byte_order_mark_and_windows_line_ends_do_no_harm() throws IOException {
        for (String file : List.of("people.csv", "routes.yaml")) {
            String text = Files.readString(folder.resolve(file));
            Files.writeString(folder.resolve(file), "\uFEFF" + text.replace("\n", "\r\n"));
        }

        assertThat(WorksFolder.read(folder, PREDICATES)).isEqualTo(WorksFolder.read(DEMO, PREDICATES));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "people.csv | W-1003,linh | W-1002,linh | people.csv:5:1 (number) setup.codeTwice",
                "people.csv | line-manager | boss | people.csv:13:4 (roles) setup.unknownCode",
                "people.csv | ,Linh Tran,technician | ,Linh Tran | people.csv:5:1 setup.wrongCellCount",
                "people.csv | number,user | number,users | people.csv:2:2 (users) setup.unknownField",
                "competences.csv | HV,1,-300 | HV,one,-300 | competences.csv:6:3 (level) setup.wrongValue",
                "competences.csv | HV,2,-200,530 | HV,2,-200,-530 | competences.csv:7:5 (to_day) setup.endsBeforeItBegins",
                "competences.csv | W-1008,BRAKE | W-9999,BRAKE | competences.csv:19:1 (person) setup.unknownCode",
                "instruments.csv | MM-01,multimeter | MM-01,meter | instruments.csv:17:2 (kind) setup.unknownCode",
                "instruments.csv | ,5,50, | ,5,5, | instruments.csv:5:6 (upper) setup.rangeCrossed",
                "locks.csv | LK-03,lock,W-1003 | LK-03,lock,W-9003 | locks.csv:5:3 (owner) setup.unknownCode",
                "locks.csv | LB-2 | LB-1 | locks.csv:18:1 (number) setup.codeTwice",
                "works.yaml | from: \"06:00\" | from: \"6 o’clock\" | works.yaml:9:5 setup.refusedValue",
                "stations.csv | ST-2,fitting | ST-2,paint | stations.csv:5:2 (stage) setup.unknownCode",
                "joints.csv | ,120,108,132, | ,150,108,132, | joints.csv:4:1 setup.refusedValue",
                "joints.csv | roof frame,A, | roof frame,D, | joints.csv:4:3 (joint_class) setup.wrongValue",
                "routes.yaml | `FIT-BUS12` | `FIT` | routes.yaml:8:40 (check_sheet) setup.unknownCode",
                "routes.yaml | title: | titel: | routes.yaml:3:10 (titel) setup.unknownField",
                "works.yaml | saturday, sunday] } | saturday, sunday], places: [LIFT] } | works.yaml:9:136 setup.unknownCode",
                "works.yaml | code: | code: 'A'\\ncode: | works.yaml:3:1 (code) setup.fieldTwice",
                "isolation-plans/bus-12m.yaml | source: \"PACK-2\" | source: \"PACK-1\" | isolation-plans/bus-12m.yaml:42:3 (points) setup.sourceUnproved",
                "isolation-plans/bus-12m.yaml | wait_minutes: 10 | wait_minutes: ten | isolation-plans/bus-12m.yaml:6:15 (wait_minutes) setup.wrongValue",
                "sheets/comm-bus12.yaml | no_concession: brakes | no_concession: doors | sheets/comm-bus12.yaml:93:20 (no_concession) setup.wrongValue",
                "sheets/strip-bus12.yaml | kind: photograph | kind: picture | sheets/strip-bus12.yaml:39:11 (asks) setup.unknownKind",
                "sheets/strip-bus12.yaml | planned_minutes: 45 | planned_minutes: -45 | sheets/strip-bus12.yaml:30:5 setup.refusedValue",
                "sheets/strip-bus12.yaml | applies_when: \"air | applies_when: \"hair | sheets/strip-bus12.yaml:29:19 (applies_when) process.conditionFault",
                "sheets/fit-bus12.yaml | joint: \"PROPSHAFT\" | joint: \"SHAFT\" | sheets/fit-bus12.yaml:22:35 (joint) process.unknownJoint",
            })
    void finds_a_planted_fault_at_its_place(String file, String old, String planted, String expected)
            throws IOException {
        replace(file, old, planted.replace("\\n", "\n"));

        assertThat(faults()).anySatisfy(fault -> assertThat(fault).startsWith(expected));
    }

    @Test
    void a_code_without_quotation_marks_is_refused_where_it_could_be_a_number() throws IOException {
        replace("sheets/comm-bus12.yaml", "\"4.2.1\"", "4.20");

        assertThat(faults())
                .containsExactly("sheets/comm-bus12.yaml:39:53 (version) setup.wrongValue "
                        + "[sheets/comm-bus12.yaml:39:53 (version), 4.20, text in quotation marks]");
    }

    @Test
    void tells_all_faults_of_all_files_at_once() throws IOException {
        replace("people.csv", "auditor", "spectator");
        replace("sheets/fit-bus12.yaml", "MOTOR-MOUNT", "MOTOR");
        replace("sheets/fit-bus12.yaml", "planned_minutes: 30", "planned_minuts: x");
        replace("sheets/intake-bus.yaml", "{ lower: 4 }", "{ lower: four, uper: 5 }");
        Files.delete(folder.resolve("works.yaml"));

        assertThat(faults())
                .extracting(fault -> fault.split(" \\[")[0])
                .containsExactlyInAnyOrder(
                        "people.csv:17:4 (roles) setup.unknownCode",
                        "sheets/fit-bus12.yaml:6:5 (planned_minutes) setup.fieldMissing",
                        "sheets/fit-bus12.yaml:11:21 (planned_minuts) setup.unknownField",
                        "sheets/intake-bus.yaml:33:57 (lower) setup.wrongValue",
                        "sheets/intake-bus.yaml:33:69 (uper) setup.unknownField",
                        "works.yaml setup.fileMissing");
    }

    @Test
    void every_fault_has_a_text_with_its_place() throws IOException {
        replace("people.csv", "auditor", "spectator");
        Files.delete(folder.resolve("works.yaml"));

        assertThat(WorksFolder.read(folder, PREDICATES).<List<Fault>>fold(files -> List.of(), faults -> faults))
                .hasSize(2)
                .allSatisfy(fault ->
                        assertThat(text(fault)).startsWith(fault.place().toString()));
    }

    @Test
    void text_in_another_encoding_is_refused_and_not_mangled() throws IOException {
        Files.write(
                folder.resolve("people.csv"),
                "number,user,name,roles\nW-1,zoe,Zoë,auditor\n".getBytes(StandardCharsets.ISO_8859_1));

        assertThat(faults()).anySatisfy(fault -> assertThat(fault).startsWith("people.csv setup.notUtf8"));
    }

    @Test
    void broken_text_is_told_and_thrown_at_nobody() throws IOException {
        Files.writeString(folder.resolve("routes.yaml"), "- code: [\n");
        Files.writeString(folder.resolve("works.yaml"), "");
        Files.writeString(folder.resolve("stages.csv"), "");
        Files.writeString(folder.resolve("joints.csv"), "\"\n");
        Files.writeString(folder.resolve("sheets/fit-bus12.yaml"), "just words");

        assertThat(faults())
                .extracting(fault -> fault.split("[: ]")[0])
                .contains("routes.yaml", "works.yaml", "stages.csv", "joints.csv", "sheets/fit-bus12.yaml");
    }

    @Test
    void a_zone_that_is_not_drawn_is_told_at_its_item() throws IOException {
        replace("sheets/fit-bus12.yaml", "zone: \"front roof\"", "zone: \"front rooof\"");
        assertThat(faults())
                .singleElement()
                .asString()
                .matches(
                        "sheets/fit-bus12.yaml:\\d+:\\d+ \\(zone\\) "
                                + "setup.unknownCode .*front rooof.*a zone of the outline of bus-12m: battery tray, .*front roof.*");
    }

    @Test
    void outlines_may_be_left_out() throws IOException {
        Files.delete(folder.resolve("outlines/bus-12m.yaml"));
        assertThat(faults()).isEmpty();
        Files.delete(folder.resolve("outlines"));
        assertThat(faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pen: detail | pen: thick | setup.wrongValue",
                "kind: circle | kind: ellipse | setup.unknownKind",
                "points: \"410 | points: \"url | setup.refusedValue",
                "name: \"under floor\" | name: \"engine bay\" | setup.refusedValue",
                "view: above | view: front | setup.wrongValue",
                "vehicle_kind: \"bus-12m\" | vehicle_kind: \"bus-18m\" | setup.unknownCode"
            })
    void what_cannot_be_drawn_is_told_with_its_place(String old, String planted, String rule) throws IOException {
        replace("outlines/bus-12m.yaml", old, planted);
        assertThat(faults()).anyMatch(fault -> fault.startsWith("outlines/bus-12m.yaml:") && fault.contains(rule));
    }
}
