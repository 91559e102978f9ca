package wainbook.setup.files;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;

/** A check sheet as read, and the place of every item. */
record SheetFile(CheckSheet sheet, Place place, Map<String, Located<CheckItem>> items) {

    /** All but the items. */
    record Head(String code, String title, String stage) {}

    static Optional<SheetFile> read(YamlFile file, List<Fault> faults) {
        int before = faults.size();
        if (!(file.root() instanceof ObjectNode root) || !root.path("items").isArray()) {
            faults.add(Fault.of(file.place("/items"), "fieldMissing", "no list of items", "items"));
            return Optional.empty();
        }
        List<CheckItem> items = new ArrayList<>();
        Map<String, Located<CheckItem>> places = new HashMap<>();
        for (int i = 0; i < root.path("items").size(); i++) {
            String at = "/items/" + i;
            Binding.TYPED
                    .bind(root.at(at), Lines.Item.class, pointer -> file.place(at + pointer), faults)
                    .flatMap(line -> new Located<>(line, file.place(at).unnamed(), pointer -> file.place(at + pointer))
                            .turned(Lines.Item::item, faults))
                    .ifPresent(item -> {
                        items.add(item.value());
                        places.put(item.value().key(), item);
                    });
        }
        Optional<Head> head = Binding.TYPED.bind(root.deepCopy().without("items"), Head.class, file::place, faults);
        if (faults.size() > before || head.isEmpty()) {
            return Optional.empty();
        }
        return new Located<>(head.get(), file.place(""))
                .turned(top -> new CheckSheet(top.code(), top.title(), items, top.stage()), faults)
                .map(sheet -> new SheetFile(sheet.value(), sheet.place(), places));
    }
}
