package wainbook.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.Map;

/** The house: a room uses rooms on floors below it, never its own floor or one above. */
@AnalyzeClasses(packages = "wainbook", importOptions = ImportOption.DoNotIncludeTests.class)
class RoomsAndFloorsTest {

    private static final Map<String, Integer> FLOORS = Map.ofEntries(
            Map.entry("engineering", 0),
            Map.entry("act", 0),
            Map.entry("ledger", 1),
            Map.entry("predicate", 1),
            Map.entry("page", 2),
            Map.entry("print", 2),
            Map.entry("works", 3),
            Map.entry("process", 4),
            Map.entry("order", 5),
            Map.entry("isolation", 6),
            Map.entry("matter", 6),
            Map.entry("pack", 6),
            Map.entry("permit", 7),
            Map.entry("safety", 8),
            Map.entry("station", 8),
            Map.entry("gate", 9),
            Map.entry("line", 10),
            Map.entry("paper", 10),
            Map.entry("quality", 10),
            Map.entry("waste", 10),
            Map.entry("handover", 11),
            Map.entry("trace", 12),
            Map.entry("book", 13),
            Map.entry("setup", 14),
            Map.entry("rehearsal", 15));

    @ArchTest
    static final ArchRule a_room_uses_only_floors_below =
            classes().that().resideInAPackage("wainbook..").should(useOnlyFloorsBelow());

    @ArchTest
    static final ArchRule rooms_have_no_cycles =
            SlicesRuleDefinition.slices().matching("wainbook.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule parts_of_a_room_have_no_cycles = SlicesRuleDefinition.slices()
            .matching("wainbook.(*).(*)..")
            .should()
            .beFreeOfCycles();

    @ArchTest
    static final ArchRule only_the_ledger_touches_what_it_keeps = noClasses()
            .that()
            .resideOutsideOfPackage("wainbook.ledger..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("wainbook.ledger.store..", "wainbook.ledger.writing..");

    @ArchTest
    static final ArchRule engineering_needs_no_framework = classes()
            .that()
            .resideInAnyPackage("wainbook.engineering..", "wainbook.act..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "wainbook.engineering..",
                    "wainbook.act..",
                    "org.apache.commons.statistics..",
                    "org.apache.commons.rng..",
                    "com.google.ortools..");

    @ArchTest
    static final ArchRule the_time_of_day_comes_in_at_one_place = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("wainbook.ledger.WorksClock")
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(Clock.class, "systemUTC")
            .orShould()
            .callMethod(Clock.class, "systemDefaultZone");

    @ArchTest
    static final ArchRule nobody_is_called_after_what_it_is_not = noClasses()
            .should()
            .haveSimpleNameEndingWith("Service")
            .orShould()
            .haveSimpleNameEndingWith("Impl")
            .orShould()
            .haveSimpleNameEndingWith("Manager")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Utils");

    private static ArchCondition<JavaClass> useOnlyFloorsBelow() {
        return new ArchCondition<>("use only rooms on floors below") {
            @Override
            public void check(JavaClass user, ConditionEvents events) {
                String room = room(user);
                user.getDirectDependenciesFromSelf().forEach(dependency -> {
                    String used = room(dependency.getTargetClass());
                    if (!used.isEmpty() && !used.equals(room) && floor(used) >= floor(room)) {
                        events.add(SimpleConditionEvent.violated(user, dependency.getDescription()));
                    }
                });
            }
        };
    }

    private static String room(JavaClass type) {
        String name = type.getPackageName();
        return name.startsWith("wainbook.") ? name.split("\\.")[1] : "";
    }

    private static int floor(String room) {
        Integer floor = FLOORS.get(room);
        if (floor == null && !room.isEmpty()) {
            throw new AssertionError("the design has no room called " + room);
        }
        return room.isEmpty() ? -1 : floor;
    }
}
