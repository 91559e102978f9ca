package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Words;
import wainbook.quality.containment.vehicle.VehicleDoubtRow;
import wainbook.works.Role;

/** Vehicles with readings in doubt that nobody has decided. */
@ApplicationScoped
class ContainmentMatters implements Matters {

    @Override
    public List<OpenMatter> open(Instant now) {
        return VehicleDoubtRow.open().stream().map(ContainmentMatters::matter).toList();
    }

    private static OpenMatter matter(VehicleDoubtRow row) {
        return new OpenMatter(
                Sort.CONTAINMENT,
                row.workOrder,
                Words.of("quality.containmentCode", row.containment),
                Optional.empty(),
                Words.of("quality.matterWhat", row.openReadings, row.openSureOut),
                row.since,
                List.of(Owner.of(Role.QUALITY_ENGINEER)),
                Due.open(),
                Words.of("quality.barsHandover"),
                "/quality/containments/" + row.containment + "/vehicles/" + row.workOrder);
    }
}
