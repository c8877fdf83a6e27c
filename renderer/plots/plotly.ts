/** The chart library with the trace kinds in use and no more; loaded once, when the first chart is drawn. */
import * as Plotly from "plotly.js/lib/core";
import * as bar from "plotly.js/lib/bar";
import * as heatmap from "plotly.js/lib/heatmap";

Plotly.register([heatmap, bar]);

export const { react, purge, toImage } = Plotly;
