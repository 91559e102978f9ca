package wainbook.paper.page;

import java.util.List;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.paper.page.sent.SentItems;
import wainbook.paper.page.sheet.IsolationSections;
import wainbook.paper.page.sheet.PermitSections;
import wainbook.paper.page.sheet.Section;
import wainbook.station.paper.PaperBlank;
import wainbook.station.paper.PaperItem;

/**
 * A form being typed in.
 *
 * @param photograph the fingerprint of the picture that was handed in; empty before that
 * @param vehicles to choose from where the form was printed for none
 */
public record TranscribeView(
        FormLine line,
        String vehicle,
        String photograph,
        List<Option> vehicles,
        List<PaperItem> items,
        List<Section> sections,
        Filled filled) {

    public boolean pictured() {
        return !photograph.isEmpty();
    }

    public boolean isItems() {
        return line.form().sort() == wainbook.paper.Sort.ITEMS;
    }

    public boolean isIsolation() {
        return line.form().sort() == wainbook.paper.Sort.ISOLATION;
    }

    public List<Option> ticks() {
        return IsolationSections.ticks();
    }

    public List<Option> sorts() {
        return PermitSections.sorts();
    }

    public List<Option> precautions() {
        return PermitSections.precautions();
    }

    public List<Option> circumstances() {
        return PermitSections.circumstances();
    }

    public boolean ticked(String name) {
        return filled.value(name).equals("yes");
    }

    public String field(PaperItem item, PaperBlank blank) {
        return SentItems.field(item, blank);
    }

    public String field(PaperItem item, String column) {
        return Section.field("item", item.key(), column);
    }
}
