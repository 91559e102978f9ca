package wainbook.matter.nonconformity;

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
import wainbook.process.Releases;
import wainbook.process.sheet.CheckItem;
import wainbook.works.Role;

/** Nonconformities that await their disposition. */
@ApplicationScoped
class NonconformityMatters implements Matters {

    private final Releases releases;

    NonconformityMatters(Releases releases) {
        this.releases = releases;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return OpenNonconformity.oldestFirst().stream().map(this::matter).toList();
    }

    private OpenMatter matter(OpenNonconformity row) {
        return new OpenMatter(
                Sort.NONCONFORMITY,
                row.workOrder,
                Words.of("matter.nonconformityNumber", row.number),
                Optional.ofNullable(row.item).map(this::title),
                row.what,
                row.since,
                List.of(Owner.of(Role.QUALITY_ENGINEER)),
                releases.stage(row.stage)
                        .map(stage -> Due.at(Words.of("matter.dueGate", stage.title())))
                        .orElse(Due.open()),
                Words.of("matter.barsSigning"),
                "/orders/" + row.workOrder + "#matters");
    }

    /** The item's title in the revision in force; its name where that has no such item. */
    private String title(String line) {
        String[] sheetAndItem = line.split("/", 2);
        return sheetAndItem.length < 2 || !sheetAndItem[0].matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")
                ? line
                : releases.sheetInForce(sheetAndItem[0])
                        .flatMap(released -> released.sheet().item(sheetAndItem[1]))
                        .map(CheckItem::title)
                        .orElse(line);
    }
}
