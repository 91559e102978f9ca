package wainbook.process.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.process.Sheets.asking;
import static wainbook.process.Sheets.item;
import static wainbook.process.Sheets.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wainbook.process.Sheets;
import wainbook.process.joint.JointClass;

class ChangesTest {

    @Test
    void sorts_items_into_added_changed_unchanged_and_removed() {
        var former = sheet(item("a"), item("b"), item("c"));
        var next = sheet(item("a"), asking("b", new Ask.Photograph()), item("d"));

        var changes = Changes.between(former, next, Set.of());

        assertThat(changes).isEqualTo(new Changes(List.of("d"), List.of("b"), Set.of("a"), List.of("c")));
        assertThat(changes.keepsEntriesOf("a")).isTrue();
        assertThat(changes.keepsEntriesOf("b")).isFalse();
    }

    @Test
    void keeps_an_entry_when_only_the_plan_the_place_or_the_caution_changed() {
        CheckItem plain = item("a");
        var replanned = new CheckItem(
                "a",
                plain.title(),
                plain.asks(),
                plain.condition(),
                plain.competence(),
                Optional.of("Hot surface"),
                25,
                Optional.of("rear"),
                plain.parts(),
                plain.after(),
                plain.dependsOn(),
                plain.appliesWhen(),
                plain.tries(),
                plain.noConcession());

        assertThat(Changes.between(sheet(plain), sheet(replanned), Set.of()).unchanged())
                .containsExactly("a");
    }

    @Test
    void opens_an_item_again_whose_joint_got_other_values() {
        var lug = item("lug", new Ask.Tighten(Sheets.LUG.code()), Condition.DEAD, List.of());
        var joints = Changes.joints(
                List.of(Sheets.LUG, Sheets.CLIP),
                List.of(Sheets.joint(Sheets.LUG.code(), JointClass.B, true), Sheets.CLIP));

        assertThat(joints).containsExactly("HV-LUG-M8");
        assertThat(Changes.between(sheet(lug), sheet(lug), joints).changed()).containsExactly("lug");
        assertThat(Changes.between(sheet(lug), sheet(lug), Set.of()).changed()).isEmpty();
    }

    @Test
    void keeps_everything_of_the_same_sheet() {
        var sheet = sheet(item("a"), item("b", "a"));

        assertThat(Changes.between(sheet, sheet, Set.of()))
                .isEqualTo(new Changes(List.of(), List.of(), Set.of("a", "b"), List.of()));
    }
}
