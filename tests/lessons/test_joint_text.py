"""What pages tell of joints: nothing of the tables is lost, and no set-up stands without its cautions."""

import re
from html import unescape

import nbformat
import pytest

from shoplib.lessons.joint_text import (
    CAUTIONS,
    faults_text,
    parts_text,
    rules_text,
    setup_text,
    setups_text,
    why_text,
)
from shoplib.tables.joint_facts import JOINT_NAMES, joint_facts
from shoplib.tables.setups import all_setups
from tests.pages import JOINTS

SETUPS = [setup for several in all_setups().values() for setup in several]
EACH = pytest.mark.parametrize("name", JOINT_NAMES)


def plain(html):
    return unescape(re.sub("<[^>]+>", " ", html)).replace("\xa0", " ")


def shown(block):
    return (repr(block), plain(block._repr_html_()))


@pytest.mark.parametrize("setup", SETUPS, ids=lambda setup: f"{setup.joint}, {setup.way.name}")
def test_a_set_up_is_shown_with_all_its_cautions_before_its_first_step(setup):
    for text in (*shown(setup_text(setup)), *shown(setups_text(setup.joint, setup.way.name))):
        cautions = [text.index(one.claim.say) for one in setup.cautions]
        steps = [text.rindex(step.say) for heading in ("reference", "stops", "order", "test", "measure", "tear_out")
                 for step in getattr(setup, heading)]
        assert cautions and max(cautions) < min(steps)
        for one in setup.cautions:
            assert not one.claim.source or one.claim.cited in text


@EACH
def test_parts_rules_reasons_and_faults_are_all_told(name):
    facts = joint_facts(name)
    for text in shown(parts_text(name)):
        assert all(part.what in text and all(also in text for also in part.also) for part in facts.parts)
    for text in shown(rules_text(name)):
        for rule in facts.rules:
            assert all(value.claim.say in text and value.claim.cited in text for value in rule.values)
            assert not rule.disagree or rule.default.why in text
        assert text.count("the bench begins with this one") == sum(
            rule.disagree and bool(rule.setting) for rule in facts.rules
        )
        assert text.count("this workbook goes by this one") == sum(
            rule.disagree and not rule.setting for rule in facts.rules
        )
    for text in shown(why_text(name)):
        for claim in (*facts.use, *facts.resists, *facts.weak, *facts.grain, *facts.strength):
            assert claim.say in text
        assert all(face.claim.say in text and face.kind in text for face in facts.glue)
    for text in shown(faults_text(name)):
        assert all(fault.looks in text and fault.cause.say in text for fault in facts.faults)


@pytest.mark.parametrize("page", JOINTS, ids=lambda page: page.stem)
def test_no_page_tells_how_to_cut_without_the_cautions_of_the_tool(page):
    """Whatever of a set-up stands on a page, saved or typed, the cautions of that set-up stand before it there."""
    cells = nbformat.read(page, as_version=4).cells
    told = "\n".join(
        "\n".join([cell.source, *(str(one.get("data", {}).get("text/plain", "")) for one in cell.get("outputs", ()))])
        for cell in cells
    )
    assert CAUTIONS in told
    for setup in SETUPS:
        if all(step.say in told for step in setup.order):
            first = told.index(setup.order[0].say)
            assert all(one.claim.say in told[:first] for one in setup.cautions), (setup.joint, setup.way.name)
