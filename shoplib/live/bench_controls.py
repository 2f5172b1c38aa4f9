"""The controls of the joint bench: what a joint's own settings ask, and the stock that its readings make."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import SimpleNamespace

import ipywidgets

from shoplib.joints.bench_pair import JointKind, Setting, Stock, Values
from shoplib.live.choose_one import choose_one
from shoplib.live.length_control import LengthControl
from shoplib.measure import (
    INCH,
    INCH_STYLE,
    MM,
    MM_STYLE,
    Style,
    narrowest,
    read_length,
    thickest,
    to_step,
    write_measured,
)
from shoplib.measure.traced import leaf
from shoplib.model.sheet import Sheet
from shoplib.words.working import said

_SHEETS = {
    "plywood": {"in": ("0.703 in", "0.699 in", "0.71 in"), "mm": ("17.5 mm", "17.3 mm", "17.7 mm")},
    "solid": {"in": ("0.75 in", "0.748 in", "0.753 in"), "mm": ("19 mm", "18.9 mm", "19.1 mm")},
    "thin": {"in": ("0.204 in", "0.201 in", "0.21 in"), "mm": ("5.9 mm", "5.8 mm", "6 mm")},
    "drawer": {"in": ("0.48 in", "0.476 in", "0.484 in"), "mm": ("11.9 mm", "11.8 mm", "12 mm")},
}
"""Made-up readings: of a sheet sold as 3/4 in or 18 mm, of a planed board, of a thin sheet, of one for drawers."""

_THICK = {"in": ("1/8 in", "2 in", "0.001 in"), "mm": ("3 mm", "50 mm", "0.1 mm")}
_WIDE = {"in": ("1 in", "24 in", "1/4 in"), "mm": ("25 mm", "600 mm", "5 mm")}

LOOKS = ("drawn apart", "put together", "section only")
"""What to look at: the boards as solids, beside the section; or the section alone."""

READINGS = ("reading_1", "reading_2", "reading_3")


@dataclass(frozen=True, slots=True)
class Bench:
    """One joint on the bench in one unit: its controls in groups, and what their values mean."""

    kind: JointKind
    unit: str

    @property
    def style(self) -> Style:
        """Sixty-fourths of an inch, or tenths of a millimetre."""
        return INCH_STYLE if self.unit == "in" else MM_STYLE

    @property
    def solid(self) -> bool:
        """Whether the joint is one of solid wood."""
        return self.kind.group > 1

    def start(self) -> Stock:
        """The stock that the bench begins with."""
        return self.stock({name: read_length(text) for name, text in self._readings().items()})

    def stock(self, lengths: Mapping[str, int], readings: int = 3) -> Stock:
        """The stock of these readings ("reading_1" ..., "receives") and, where it is given, this "width"."""
        sheet = "solid" if self.solid else "plywood"
        read = tuple(lengths[name] for name in READINGS[:readings])
        width = lengths.get("width", self.kind.usual_width(self.unit))
        frame = {"receives_width": width} if self.kind.frame else {}
        nominal = lengths["reading_1"]
        return Stock(
            Sheet("entering board", sheet, nominal, read),
            Sheet("receiving board", sheet, lengths["receives"], (lengths["receives"],)),
            width, style=self.style, enters_length=self._shown(), receives_length=self._shown(), **frame,
        )

    def names(self) -> tuple[str, str]:
        """What the entering and the receiving board are called."""
        joint = self.kind.build(self.start()).joints[0]
        return joint.enters, joint.receives

    def reading(self, label: str, name: str) -> LengthControl:
        """A control for a caliper reading."""
        low, high, step = _THICK[self.unit]
        return LengthControl(label, self._readings()[name], low, high, self.style, step, measured=True)

    def width(self, label: str) -> LengthControl:
        """A control for how wide the boards are, along the joint or across the frame."""
        low, high, step = _WIDE[self.unit]
        usual = write_measured(self.kind.usual_width(self.unit), self.style)
        return LengthControl(label, usual, low, high, self.style, step)

    def control(self, setting: Setting) -> ipywidgets.Widget:
        """The control of one setting, at its usual value; it goes as far as any stock of the bench lets it go."""
        stock = self.start()
        label, usual = f"{setting.label[:1].upper()}{setting.label[1:]}", setting.default(stock)
        if setting.unit == "length":
            decimal = bool(setting.step(stock) % self.style.step)
            texts = (write_measured(ticks, self.style) for ticks in (usual, *self._limits(setting)))
            step = write_measured(setting.step(stock), self.style)
            return LengthControl(label, *texts, self.style, step, measured=decimal)
        return choose_one(label, [shown(setting, value) for value in self.grid(setting)], shown(setting, usual))

    def grid(self, setting: Setting) -> range:
        """What the control of a setting can be moved to: whole steps between its limits.

        >>> from shoplib.joints import joint
        >>> [at / INCH for at in Bench(joint("dado"), "in").grid(joint("dado").settings[0])[:3]]
        [0.125, 0.140625, 0.15625]
        """
        step, (low, high) = setting.step(self.start()), self._limits(setting)
        first = to_step(low, step, "up") if setting.unit == "length" else low
        return range(first, high + 1, step)

    def _limits(self, setting: Setting) -> tuple[int, int]:
        """How far a control goes: a length as far as any stock of the bench lets it go."""
        stock, thin, thick = self.start(), self._extreme(0), self._extreme(1)
        low, high, usual = setting.low(stock), setting.high(stock), setting.default(stock)
        if setting.unit != "length":
            return low, high
        return narrowest([low, setting.low(thin), usual]), thickest([high, setting.high(thick), usual])

    def values(self, given: SimpleNamespace) -> dict[str, int]:
        """The settings as the model has them: what the controls of this joint say."""
        found = {}
        for setting in self.kind.settings:
            value = getattr(given, key_of(setting))
            found[setting.name] = value if setting.unit == "length" else meant(setting, value, self.start())
        return found

    def traced(self, stock: Stock, values: Values) -> tuple[Stock, dict[str, int]]:
        """The same stock and values, whose lengths carry the names of their controls."""
        enters, receives = self.names()
        several = len(stock.enters.readings) > 1
        readings = tuple(
            leaf(reading, f"reading {number} of the {enters}" if several else f"measured thickness of the {enters}",
                 "measured")
            for number, reading in enumerate(stock.enters.readings, 1)
        )
        thick = leaf(stock.receives.nominal, f"measured thickness of the {receives}", "measured")
        width = leaf(stock.width, "width of the boards")
        named = Stock(
            Sheet(f"the {enters}", stock.enters.kind, readings[0], readings),
            Sheet(f"the {receives}", stock.receives.kind, thick, (thick,)),
            width, None if stock.receives_width is None else width, stock.enters_length, stock.receives_length,
            stock.style,
        )
        labels = {setting.name: setting for setting in self.kind.settings}
        return named, {
            name: leaf(value, labels[name].label) if labels[name].unit == "length" else value
            for name, value in values.items()
        }

    def _readings(self) -> dict[str, str]:
        usual = "solid" if self.solid else "plywood"
        enters, receives = (_SHEETS[sheet or usual][self.unit] for sheet in self.kind.boards)
        return dict(zip(READINGS, enters, strict=True)) | {"receives": receives[0]}

    def _shown(self) -> int:
        """How much of each board is shown beyond the joint."""
        return 4 * INCH if self.unit == "in" else 100 * MM

    def _extreme(self, end: int) -> Stock:
        """The thinnest and narrowest stock, or the thickest and widest."""
        thick, wide = read_length(_THICK[self.unit][end]), read_length(_WIDE[self.unit][end])
        return self.stock(dict.fromkeys((*READINGS, "receives"), thick) | {"width": wide})


def key_of(setting: Setting) -> str:
    """The name of a setting's control.

    >>> from shoplib.joints import joint
    >>> key_of(joint("dado").settings[2])
    'end_gap'
    """
    return setting.name.replace(" ", "_")


def is_clearance(setting: Setting) -> bool:
    """Whether it is room that is left, not wood that is cut."""
    return setting.name == "fit" or setting.name.endswith("gap")


def shown(setting: Setting, value: int) -> str | int:
    """A count, an angle, a slope or a choice as its list shows it.

    >>> from shoplib.joints import joint
    >>> shown(joint("tongue").settings[4], 1)
    'outer'
    """
    if setting.unit == "choice":
        return setting.choices[value]
    if setting.unit == "slope":
        return f"1 in {value // 10}" if value % 10 == 0 else f"1 in {value // 10}.{value % 10}"
    return f"{value} degrees" if setting.unit == "degrees" else value


def meant(setting: Setting, text: str | int, stock: Stock) -> int:
    """The value that is shown so."""
    values = range(setting.low(stock), setting.high(stock) + 1, setting.step(stock))
    return next(value for value in values if shown(setting, value) == text)


def told(setting: Setting, value: int, style: Style) -> str:
    """A setting's value in words, its label before it.

    >>> from shoplib.joints import joint
    >>> told(joint("dado").settings[0], 6 * MM, MM_STYLE)
    'depth of the cut 6 mm'
    """
    if setting.unit == "length":
        return said(setting.label, value, style)
    return f"{setting.label}: {shown(setting, value)}"
