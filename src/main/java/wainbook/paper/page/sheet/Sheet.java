package wainbook.paper.page.sheet;

import java.time.Instant;
import java.util.List;
import wainbook.page.Option;
import wainbook.page.ScanCode;
import wainbook.paper.PaperForm;
import wainbook.paper.page.FormLine;
import wainbook.station.paper.PaperItem;

/**
 * A form as it is printed.
 *
 * @param about the vehicle and where it stands, line by line
 * @param standing open matters and holds at the time of print
 * @param electrical how the vehicle stood electrically at the time of print; empty on blank forms
 * @param ticks of an isolation form
 */
public record Sheet(
        PaperForm form,
        ScanCode code,
        List<String> about,
        String electrical,
        List<String> standing,
        List<PaperItem> items,
        List<Option> ticks,
        List<Section> sections) {

    public boolean isItems() {
        return form.sort() == wainbook.paper.Sort.ITEMS;
    }

    public boolean isIsolation() {
        return form.sort() == wainbook.paper.Sort.ISOLATION;
    }

    public List<PermitSections.Asked> asked() {
        return PermitSections.asked();
    }

    public List<Option> circumstances() {
        return PermitSections.circumstances();
    }

    /** For the head of every page; a blank form’s vehicle is written by hand. */
    public String vehicle() {
        return form.vehicle().orElse("________________");
    }

    public Instant printedAt() {
        return form.printed().moment().at();
    }

    public String printedBy() {
        return form.printed().moment().who();
    }

    public String title() {
        return new FormLine(form).sort();
    }
}
