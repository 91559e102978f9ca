package wainbook.station.paper;

import java.util.List;
import java.util.Optional;
import wainbook.page.Words;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Condition;
import wainbook.station.ItemState;
import wainbook.station.tool.ToolNeeded;
import wainbook.station.words.Wanted;

/**
 * An open check item as a paper shows it.
 *
 * @param wanted limits with their units
 * @param condition what its electrical condition asks; empty where nothing
 * @param toolKind the kind of instrument, as the register calls it; empty where none is needed
 * @param onPaper whether it may be typed in from paper at all
 */
public record PaperItem(
        String key,
        String title,
        Optional<String> zone,
        Optional<String> wanted,
        Optional<String> condition,
        Optional<String> competence,
        Optional<String> caution,
        Optional<String> toolKind,
        List<PaperBlank> blanks,
        boolean onPaper) {

    static PaperItem of(ItemState state, Optional<Joint> joint) {
        Ask ask = state.item().asks();
        return new PaperItem(
                state.key(),
                state.item().title(),
                state.item().zone(),
                Wanted.of(ask, joint).filter(text -> !text.isEmpty()),
                Optional.of(state.item().condition())
                        .filter(condition -> condition != Condition.NONE)
                        .map(condition -> Words.of("station.condition." + condition.name())),
                state.item().competence(),
                state.item().caution(),
                ToolNeeded.of(ask, joint).map(ToolNeeded::kind),
                PaperBlank.of(ask, joint),
                takable(state));
    }

    /** Live work and sanctions for test, what takes two by name, waits and files are done again in the tool. */
    static boolean takable(ItemState state) {
        Ask ask = state.item().asks();
        boolean power = state.item().condition() == Condition.LIVE
                || state.item().condition() == Condition.TEST_UNDER_ISOLATION;
        boolean elsewhere = ask instanceof Ask.Wait || ask instanceof Ask.File || ask instanceof Ask.Photograph;
        return !power && !elsewhere && !(ask instanceof Ask.Attended);
    }
}
