package wainbook.order.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import wainbook.act.Reason;
import wainbook.order.FactQuestion;
import wainbook.order.OrderList;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldChoices;
import wainbook.order.hold.HoldInWords;
import wainbook.page.Filled;
import wainbook.page.Option;

/** The pages of this room. */
@CheckedTemplate(basePath = "order", defaultName = CheckedTemplate.ELEMENT_NAME)
final class OrderPages {

    private OrderPages() {}

    static native TemplateInstance orders(OrderList list);

    static native TemplateInstance make(Filled filled, NewOrder choices);

    static native TemplateInstance donor(Filled filled, String order);

    static native TemplateInstance comesBack(Filled filled, WorkOrder earlier, List<Option> routes);

    static native TemplateInstance fact(Filled filled, String order, FactQuestion question, List<Reason> closed);

    static native TemplateInstance hold(Filled filled, String order, HoldChoices choices);

    static native TemplateInstance release(Filled filled, String order, HoldInWords held);
}
