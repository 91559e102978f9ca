package wainbook.setup.taking.page;

import java.util.List;
import wainbook.act.Reason;
import wainbook.setup.files.Change;
import wainbook.setup.files.Part;
import wainbook.setup.taking.Preview;

/** What taking files would change, as the page shows it. */
public record PreviewView(Preview preview) {

    /** What would be written, part by part. */
    public List<ChangeInWords> written() {
        return ChangeInWords.all(preview.differences().written());
    }

    /** What is only on record, or was ended there: nothing happens to it. */
    public List<ChangeInWords> kept() {
        return ChangeInWords.all(preview.differences().changes().stream()
                .filter(change -> !change.writes())
                .toList());
    }

    public List<Reason> reasons() {
        return preview.reasons();
    }

    public boolean needsSecond() {
        return preview.needsSecond();
    }

    public boolean bringsPeople() {
        return preview.differences().written(Part.PEOPLE).anyMatch(change -> change.sort() == Change.Sort.ADDED);
    }

    public String fingerprint() {
        return preview.fingerprint();
    }
}
