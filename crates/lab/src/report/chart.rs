//! Small line charts as SVG.

use std::fmt::Write;

/// One line of a chart.
#[derive(Clone, Debug)]
pub struct Line {
    /// Its name, written at its end.
    pub name: String,
    /// Points: x, y.
    pub points: Vec<(f64, f64)>,
}

/// A chart.
#[derive(Clone, Debug)]
pub struct Chart {
    /// Its file, without a folder.
    pub file: String,
    /// Title.
    pub title: String,
    /// What runs along the bottom.
    pub x: String,
    /// What runs up the side.
    pub y: String,
    /// Least and greatest y.
    pub range: (f64, f64),
    /// Lines.
    pub lines: Vec<Line>,
    /// Level drawn across, such as what was wanted.
    pub wanted: Option<f64>,
}

const WIDE: f64 = 640.0;
const HIGH: f64 = 340.0;
const LEFT: f64 = 60.0;
const RIGHT: f64 = 170.0;
const TOP: f64 = 34.0;
const BOTTOM: f64 = 46.0;
/// Okabe and Ito's palette, told apart by most eyes; the dashes differ too.
const INK: [&str; 6] = ["#0072b2", "#d55e00", "#009e73", "#cc79a7", "#56b4e9", "#000000"];
const DASH: [&str; 6] = ["", "7 4", "2 4", "9 3 2 3", "4 2", "12 4"];

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

impl Chart {
    /// The picture.
    pub fn svg(&self) -> String {
        let xs = || self.lines.iter().flat_map(|l| l.points.iter().map(|p| p.0));
        let (x0, x1) = (xs().fold(f64::INFINITY, f64::min), xs().fold(f64::NEG_INFINITY, f64::max));
        let (x0, x1) = if x0 < x1 { (x0, x1) } else { (x0.min(0.0), x1.max(0.0) + 1.0) };
        let (y0, y1) = self.range;
        let px = |x: f64| LEFT + (x - x0) / (x1 - x0) * (WIDE - LEFT - RIGHT);
        let py = |y: f64| HIGH - BOTTOM - (y.clamp(y0, y1) - y0) / (y1 - y0) * (HIGH - TOP - BOTTOM);
        let mut s = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDE} {HIGH}\" font-family=\"sans-serif\" font-size=\"12\" role=\"img\"><title>{0}</title><rect width=\"{WIDE}\" height=\"{HIGH}\" fill=\"#fff\"/><text x=\"{LEFT}\" y=\"18\" font-size=\"14\">{0}</text>",
            escaped(&self.title)
        );
        // Writing to a String cannot fail.
        for step in 0..=4 {
            let part = f64::from(step) / 4.0;
            let (x, y) = (x0 + part * (x1 - x0), y0 + part * (y1 - y0));
            let _ = write!(
                s,
                "<line x1=\"{LEFT}\" x2=\"{1}\" y1=\"{0:.1}\" y2=\"{0:.1}\" stroke=\"#ddd\"/><text x=\"{2}\" y=\"{3:.1}\" text-anchor=\"end\">{4}</text><text x=\"{5:.1}\" y=\"{6}\" text-anchor=\"middle\">{7}</text>",
                py(y),
                WIDE - RIGHT,
                LEFT - 6.0,
                py(y) + 4.0,
                number(y),
                px(x),
                HIGH - BOTTOM + 16.0,
                number(x)
            );
        }
        if let Some(level) = self.wanted {
            let _ = write!(
                s,
                "<line x1=\"{LEFT}\" x2=\"{1}\" y1=\"{0:.1}\" y2=\"{0:.1}\" stroke=\"#555\" stroke-dasharray=\"1 3\"/><text x=\"{2}\" y=\"{3:.1}\" fill=\"#555\">wanted</text>",
                py(level),
                WIDE - RIGHT,
                LEFT + 4.0,
                py(level) - 4.0
            );
        }
        let ends = spread(self.lines.iter().map(|l| l.points.last().map_or(HIGH, |p| py(p.1))).collect());
        for (at, (line, end)) in self.lines.iter().zip(ends).enumerate() {
            let (ink, dash) = (INK[at % INK.len()], DASH[at % DASH.len()]);
            let path: Vec<String> = line.points.iter().map(|p| format!("{:.1},{:.1}", px(p.0), py(p.1))).collect();
            let _ = write!(
                s,
                "<polyline fill=\"none\" stroke=\"{ink}\" stroke-width=\"2\" stroke-dasharray=\"{dash}\" points=\"{}\"/>",
                path.join(" ")
            );
            for p in &line.points {
                let _ = write!(s, "<circle cx=\"{:.1}\" cy=\"{:.1}\" r=\"2.5\" fill=\"{ink}\"/>", px(p.0), py(p.1));
            }
            let _ = write!(
                s,
                "<text x=\"{}\" y=\"{:.1}\" fill=\"{ink}\">{}</text>",
                WIDE - RIGHT + 6.0,
                end + 4.0,
                escaped(&line.name)
            );
        }
        let _ = writeln!(
            s,
            "<text x=\"{:.1}\" y=\"{}\" text-anchor=\"middle\">{}</text><text transform=\"translate(14 {:.1}) rotate(-90)\" text-anchor=\"middle\">{}</text></svg>",
            f64::midpoint(LEFT, WIDE - RIGHT),
            HIGH - 8.0,
            escaped(&self.x),
            f64::midpoint(TOP, HIGH - BOTTOM),
            escaped(&self.y)
        );
        s
    }
}

fn number(x: f64) -> String {
    if x.fract().abs() < 1e-9 { format!("{x:.0}") } else { format!("{x:.2}") }
}

/// Pushes names at the ends of lines apart, so that they can be read.
fn spread(mut at: Vec<f64>) -> Vec<f64> {
    let mut order: Vec<usize> = (0..at.len()).collect();
    order.sort_by(|a, b| at[*a].total_cmp(&at[*b]));
    for pair in order.windows(2) {
        at[pair[1]] = at[pair[1]].max(at[pair[0]] + 14.0);
    }
    let over = order.last().map_or(0.0, |last| (at[*last] - (HIGH - BOTTOM)).max(0.0));
    at.iter_mut().for_each(|y| *y -= over);
    at
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_chart_is_well_formed_even_with_one_point_or_none() {
        for points in [vec![], vec![(3.0, 0.5)], vec![(0.0, 0.1), (10.0, 0.9)]] {
            let line = Line { name: "a < b".into(), points };
            let chart = Chart {
                file: "x.svg".into(),
                title: "t & u".into(),
                x: "x".into(),
                y: "y".into(),
                range: (0.0, 1.0),
                lines: vec![line],
                wanted: Some(0.95),
            };
            let svg = chart.svg();
            assert!(!svg.contains("NaN") && !svg.contains("inf") && svg.contains("a &lt; b"), "{svg}");
        }
    }
}
