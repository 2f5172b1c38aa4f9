"""Which file a page means by a name."""

import pytest

from shoplib.documents import examples
from shoplib.documents.examples import project_path


def test_a_file_that_the_readme_told_to_make_is_found_from_the_folder_of_the_pages(tmp_path, monkeypatch):
    """It lies in the folder of the workbook, and pages run in `notebooks/`."""
    (tmp_path / "notebooks").mkdir()
    (tmp_path / "my_case.toml").write_text("", encoding="utf-8")
    monkeypatch.setattr(examples, "PROJECTS", tmp_path / "data" / "projects")
    monkeypatch.chdir(tmp_path / "notebooks")
    assert project_path("my_case.toml").read_text(encoding="utf-8") == ""
    (tmp_path / "notebooks" / "my_case.toml").write_text("nearer", encoding="utf-8")
    assert project_path("my_case.toml").read_text(encoding="utf-8") == "nearer"
    assert str(project_path("none.toml")) == "none.toml"


def test_a_name_that_no_example_has_is_refused():
    with pytest.raises(LookupError, match="There is no example"):
        project_path("my_case")
