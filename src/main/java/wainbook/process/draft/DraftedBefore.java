package wainbook.process.draft;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.math.BigDecimal;
import java.util.List;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.joint.JointBefore;
import wainbook.process.plan.Check;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;
import wainbook.process.sheet.CheckSheet;

/** A draft in the shape of {@code process.draftKept/1}. Works have such entries on record: it never changes. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = DraftedBefore.OfSheet.class, name = "sheet"),
    @JsonSubTypes.Type(value = DraftedBefore.OfJoints.class, name = "joints"),
    @JsonSubTypes.Type(value = DraftedBefore.OfRoute.class, name = "route"),
    @JsonSubTypes.Type(value = DraftedBefore.OfPlan.class, name = "plan"),
    @JsonSubTypes.Type(value = DraftedBefore.OfStages.class, name = "stages")
})
public sealed interface DraftedBefore {

    Drafted newer();

    record OfSheet(CheckSheet sheet) implements DraftedBefore {
        @Override
        public Drafted newer() {
            return new SheetDraft(sheet);
        }
    }

    record OfJoints(List<JointBefore> joints) implements DraftedBefore {
        @Override
        public Drafted newer() {
            return new JointsDraft(joints.stream().map(JointBefore::newer).toList());
        }
    }

    record OfRoute(Route route) implements DraftedBefore {
        @Override
        public Drafted newer() {
            return new RouteDraft(route);
        }
    }

    record OfPlan(
            String variant,
            String code,
            List<Source> sources,
            List<Source> later,
            List<Point> points,
            int waitMinutes,
            BigDecimal maximumVolt,
            boolean mayTravel,
            List<Check> restoration)
            implements DraftedBefore {
        @Override
        public Drafted newer() {
            return new PlanDraft(
                    variant, code, sources, later, points, waitMinutes, maximumVolt, mayTravel, restoration);
        }
    }

    record OfStages(List<Stage> stages, List<Station> stations) implements DraftedBefore {
        @Override
        public Drafted newer() {
            return new StagesDraft(stages, stations);
        }
    }
}
