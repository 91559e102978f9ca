package wainbook.handover.record.page;

import wainbook.handover.record.Wordlists;
import wainbook.page.Filled;

/** @param words whether the reader may word them */
public record WordlistsView(Wordlists lists, boolean words, Filled filled) {

    public String things() {
        return String.join("\n", lists.things());
    }

    public String topics() {
        return String.join("\n", lists.topics());
    }
}
