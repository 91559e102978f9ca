package wainbook.process.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wainbook.page.Words;
import wainbook.process.draft.About;
import wainbook.process.draft.Part;
import wainbook.process.draft.Revisions;
import wainbook.process.draft.Revisions.Version;

/** One paper in one of its revisions, with the history of them all. */
public record PaperView(Revisions revisions, Version version, boolean mayDraft) {

    /** What a paper is, and which. */
    static String name(About about) {
        String thing = Words.of("process.thing." + about.thing());
        return about.thing().single() ? thing : Words.of("process.thingCalled", thing, about.called());
    }

    public String name() {
        return name(revisions.about());
    }

    public String path() {
        return revisions.about().path();
    }

    public boolean inForce() {
        return version.revision() == revisions.revision();
    }

    public Map<String, List<Part>> groups() {
        return groups(version.what().parts());
    }

    /** The newest first. */
    public List<Version> history() {
        var newestFirst = new ArrayList<>(revisions.versions());
        Collections.reverse(newestFirst);
        return newestFirst;
    }

    /** The revision before one of them; 0 for the first. A plan that came with files may leave numbers out. */
    public int before(Version one) {
        int at = revisions.versions().indexOf(one);
        return at > 0 ? revisions.versions().get(at - 1).revision() : 0;
    }

    public boolean plan() {
        return revisions.about().thing() == About.Thing.PLAN;
    }

    /** Whether vehicles may be bound to a revision that is not in force. */
    public boolean binds() {
        return revisions.about().thing() == About.Thing.SHEET;
    }

    public String standing() {
        return DraftView.standing(revisions);
    }

    static Map<String, List<Part>> groups(List<Part> parts) {
        var groups = new LinkedHashMap<String, List<Part>>();
        parts.forEach(
                part -> groups.computeIfAbsent(Words.of("process.group." + part.group()), group -> new ArrayList<>())
                        .add(part));
        return groups;
    }
}
