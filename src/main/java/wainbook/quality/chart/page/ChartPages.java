package wainbook.quality.chart.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of charts. */
@CheckedTemplate(basePath = "quality", defaultName = CheckedTemplate.ELEMENT_NAME)
final class ChartPages {

    private ChartPages() {}

    static native TemplateInstance charts(ChartsView list);

    static native TemplateInstance chart(ChartView view);
}
