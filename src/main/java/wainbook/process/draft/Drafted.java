package wainbook.process.draft;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;
import wainbook.act.Reason;
import wainbook.process.ProcessSaying;

/** One paper of the process with all that it says, in force or not yet. May hold faults as long as it is a draft. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = SheetDraft.class, name = "sheet"),
    @JsonSubTypes.Type(value = JointsDraft.class, name = "joints"),
    @JsonSubTypes.Type(value = RouteDraft.class, name = "route"),
    @JsonSubTypes.Type(value = PlanDraft.class, name = "plan"),
    @JsonSubTypes.Type(value = StagesDraft.class, name = "stages")
})
public sealed interface Drafted permits SheetDraft, JointsDraft, RouteDraft, PlanDraft, StagesDraft {

    About about();

    String title();

    /** All that stands in the way of its release; where a fault is about one part, its first argument is the part's key. */
    List<Reason> faults(Surroundings surroundings);

    /** Cautions to whoever drafts it, which bar nothing; the first argument is the part's key, as with faults. */
    default List<Reason> remarks(Surroundings surroundings) {
        return List.of();
    }

    /** What is said to put it in force after {@code former}; empty where nothing would change. */
    List<ProcessSaying> sayings(Revisions former);

    /** What it says, part by part, in words. */
    List<Part> parts();
}
